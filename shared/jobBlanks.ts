/** What a job takes of blanks by the sums that price it, and what they cost; currency units. */
export interface JobBlanks {
  /** Null where nobody has said. */
  readonly freight: number | null;
  /** Sizes of lines; one of a blank may stand twice. */
  readonly sizes: readonly {
    readonly blankId: string;
    readonly size: string;
    /** Good pieces. */
    readonly pieces: number;
    /** Blanks, spares among them. */
    readonly take: number;
    /** A blank of it; 0 where the customer brings it. */
    readonly each: number;
  }[];
}
