import { instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

const visitSchema = z.strictObject({
  at: instantSchema,
  /** Whether the store held anything of the maker's own, more than the example as it comes. */
  holdsOwn: z.boolean(),
});

/** What is known of the visit before, apart from the store: the store itself may be gone. */
export type Visit = Readonly<z.infer<typeof visitSchema>>;

export interface VisitMark {
  /** The latest visit; null where none is known. */
  readonly last: () => Visit | null;
  readonly note: (visit: Visit) => void;
}

const KEY = 'pressminute-visit';

/** The mark in the browser's small storage, which some clear apart from the store, and some with it. */
export const visitMark: VisitMark = {
  last: () => {
    try {
      const visit = visitSchema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
      return visit.success ? visit.data : null;
    } catch {
      // Forbidden, or not ours: then nothing is known of an earlier visit.
      return null;
    }
  },
  note: (visit) => {
    try {
      localStorage.setItem(KEY, JSON.stringify(visit));
    } catch {
      // Forbidden or full: the next visit will know nothing of this one.
    }
  },
};
