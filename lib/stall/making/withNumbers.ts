import type { Job } from '@/shared/schemas/job';

/**
 * A job with what is to be pressed, and whatever else was changed in it since that was reckoned.
 *
 * @param now as it is
 * @param before as it was when its numbers were reckoned
 * @param after the same with its numbers
 */
export function withNumbers(now: Job, before: Pick<Job, 'lines'>, after: Pick<Job, 'lines'>): Job {
  const isIn = ({ lines }: Pick<Job, 'lines'>, lineId: string) => lines.some(({ id }) => id === lineId);
  const kept = now.lines
    .filter(({ id }) => isIn(after, id) || !isIn(before, id))
    .map((line) => {
      const numbered = after.lines.find(({ id }) => id === line.id);
      return numbered === undefined ? line : { ...line, quantities: numbered.quantities };
    });
  const added = after.lines.filter(({ id }) => !isIn(before, id) && !isIn(now, id));
  return { ...now, lines: [...kept, ...added] };
}
