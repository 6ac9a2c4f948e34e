/** The mirror of a job after a print came out reversed. */
export const mirrorTable = {
  checked: 'The mirror was checked',
} as const;

/** What came, what it would cause, what to do. */
export const mirrorWords = (job: string, pieces: number): string =>
  `${job}: ${pieces === 1 ? 'one print' : `${pieces} prints`} came out reversed. Every further one would be lost the same way: check before its next print that the file is mirrored exactly once.`;
