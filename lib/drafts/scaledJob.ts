import type { Job } from '@/shared/schemas/job';
import { splitWhole } from '@/shared/splitWhole';

/**
 * A job made for another number of pieces in the same mix: lines share them first, then the sizes of each line, by
 * largest remainder. A size with none stays without; what the customer said in all is theirs and stays.
 *
 * @param pieces whole pieces of the whole job, 1 or more
 */
export function scaledJob(job: Job, pieces: number): Job {
  const ofLines = job.lines.map(({ quantities }) => sum(quantities));
  const all = ofLines.reduce((total, one) => total + one, 0);
  if (!(all > 0)) return job;
  const toLines = splitWhole(
    pieces,
    ofLines.map((one) => (pieces * one) / all),
  );
  const lines = job.lines.map((line, at) => {
    const from = ofLines[at] ?? 0;
    const to = toLines[at] ?? 0;
    // Shares of nothing would be no numbers.
    if (from === 0) return line;
    const parts = splitWhole(
      to,
      line.quantities.map(({ quantity }) => (to * quantity) / from),
    );
    const quantities = line.quantities.map((one, index) => ({ ...one, quantity: parts[index] ?? 0 }));
    return { ...line, quantities };
  });
  return { ...job, lines };
}

const sum = (quantities: Job['lines'][number]['quantities']): number =>
  quantities.reduce((total, { quantity }) => total + quantity, 0);
