import type { CalendarEntry } from '@/lib/exports/calendarFile';
import { sha256OfValue } from '@/lib/stored/sha256';
import { z } from '@/shared/schemas/z';

const KEY = 'pressminute-calendar';
/** Orders handed out longest ago are forgotten first. */
const MOST = 100;
/** What an entry that is called off is called, since its words are not kept. */
const CALLED_OFF = 'Called off';

type EntryNow = Omit<CalendarEntry, 'sequence' | 'isCancelled'>;

/**
 * What went into the last calendar file of each order; kept apart from the documents, for it tells of a file and no order.
 * Words are kept as their hash alone: what names the customer must not outlast the customer.
 */
export const handedOut = {
  /** @param now what there is to hand out: an entry whose words are the same as then comes with them, others without */
  of(orderId: string, now: readonly EntryNow[]): readonly CalendarEntry[] {
    const kept = read().find(([id]) => id === orderId)?.[1] ?? [];
    return kept.map(({ id, sequence, when, said, isCancelled }) => {
      const same = now.find((entry) => entry.id === id && hashOf(entry) === said);
      const { title, details } = same ?? { title: CALLED_OFF, details: '' };
      return { id, sequence, when, title, details, isCancelled };
    });
  },
  remember(orderId: string, entries: readonly CalendarEntry[]): void {
    const others = read().filter(([id]) => id !== orderId);
    const kept = entries.map((entry) => {
      const { id, sequence, when, isCancelled } = entry;
      return { id, sequence, when, isCancelled, said: hashOf(entry) };
    });
    try {
      localStorage.setItem(KEY, JSON.stringify([...others, [orderId, kept]].slice(-MOST)));
    } catch {
      // Full, or forbidden by the browser: the next file begins with a number that what happened has raised.
    }
  },
};

// Helpers

/** Salted with its own id, so that one name has no hash to be known by. */
const hashOf = ({ id, title, details }: EntryNow): string => sha256OfValue([id, title, details]);

type HandedOut = z.infer<typeof handedOutSchema>[number];

function read(): readonly HandedOut[] {
  try {
    const kept = handedOutSchema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? '[]'));
    return kept.success ? kept.data : [];
  } catch {
    // Forbidden, or no list of ours.
    return [];
  }
}

const whenSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('days'), from: z.string(), to: z.string() }),
  z.strictObject({ kind: z.literal('time'), day: z.string(), fromMinute: z.number(), minutes: z.number() }),
]);
const entrySchema = z.strictObject({
  id: z.string(),
  sequence: z.int().min(0),
  when: whenSchema,
  said: z.string(),
  isCancelled: z.boolean(),
});
const handedOutSchema = z.array(z.tuple([z.string(), z.array(entrySchema)]));
