import { z } from 'zod';

/** A job that was copied just now, and what its copy does not bear. */
const copiedSchema = z.object({
  id: z.string(),
  /** Name of the job it was made of. */
  of: z.string(),
  leftOut: z.object({ wantedOn: z.string().nullable(), waivers: z.number() }),
});

type Copied = Readonly<z.infer<typeof copiedSchema>>;

const KEY = 'pressminute-last-copy';

let copied: Copied | null = null;

/** The copy made last in this tab, for the screen that opens it, though it be a new document; a reload of that forgets it. */
export const lastCopy = {
  remember(made: Copied): void {
    copied = made;
    try {
      sessionStorage.setItem(KEY, JSON.stringify(made));
    } catch {
      // Forbidden or full: without a network the copy is then opened without the note.
    }
  },
  /** @returns null where this job is not that copy. */
  recall(id: string): Copied | null {
    copied ??= carriedOver();
    forget();
    return copied?.id === id ? copied : null;
  },
};

// Helpers

function carriedOver(): Copied | null {
  try {
    return copiedSchema.parse(JSON.parse(sessionStorage.getItem(KEY) ?? ''));
  } catch {
    // Nothing was carried over.
    return null;
  }
}

function forget(): void {
  try {
    sessionStorage.removeItem(KEY);
  } catch {
    // Nothing was kept either.
  }
}
