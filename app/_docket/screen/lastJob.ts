const KEY = 'pressminute-last-job';

/** The job looked at last on this device; kept apart from the documents, because looking is no edit. */
export const lastJob = {
  recall(): string | null {
    try {
      return localStorage.getItem(KEY);
    } catch {
      // Some browsers forbid it; then the front door shows the job changed last.
      return null;
    }
  },
  remember(jobId: string): void {
    try {
      localStorage.setItem(KEY, jobId);
    } catch {
      // As above.
    }
  },
};
