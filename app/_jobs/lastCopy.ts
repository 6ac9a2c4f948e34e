/** A job that was copied just now, and what its copy does not bear. */
interface Copied {
  readonly id: string;
  /** Name of the job it was made of. */
  readonly of: string;
  readonly leftOut: { readonly wantedOn: string | null; readonly waivers: number };
}

let copied: Copied | null = null;

/** The copy made last on this page, for the screen that opens it; a reload forgets it. */
export const lastCopy = {
  remember(made: Copied): void {
    copied = made;
  },
  /** @returns null where this job is not that copy. */
  recall: (id: string): Copied | null => (copied?.id === id ? copied : null),
};
