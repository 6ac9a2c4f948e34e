/** Counts acts of typing on this page; steps of undo are told apart by it. */
let act = 0;

/** Typing in one field goes on until it is left, Enter is pressed, or its text is put anew at once. */
export const typing = {
  /** The act of typing that goes on. */
  act: (): number => act,
  /** What is committed from now on is a step of its own. */
  ends(): void {
    act += 1;
  },
  /** Tells of a text that changes; more than a letter at a time is no going on. */
  goes(before: string, after: string): void {
    if (Math.abs(after.length - before.length) > 1) act += 1;
  },
};
