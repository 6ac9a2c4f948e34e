import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import type { AgreedChange, AgreedJob } from '@/lib/quotes/agreed/jobAsAgreed';

/** @returns what a job becomes with a yes: “The job becomes 40 × Club shirt, without Chest badge.” */
export const agreedJobWords = (job: AgreedJob, formatter: Formatter): string =>
  `The job becomes ${becomes(job, formatter)}.${hasOthers(job) ? ` ${PRICE}` : ''}`;

/**
 * @param isChanged whether a change of the order was noted since, which may be why
 * @returns that a job is no longer what was accepted, and what it would become again
 */
export const otherThanAgreedWords = (job: AgreedJob, isChanged: boolean, formatter: Formatter): Wording =>
  wording(
    `${job.job.name} is not as it was accepted.`,
    `Accepted: ${becomes(job, formatter)}. The bench, proofs and the delivery note follow the job, confirmation and invoice what was accepted.${isChanged ? ' A change was noted since, which may be why.' : ''}`,
  );

export const TAKE_AGREED = 'Make it what was accepted';

// Helpers

const PRICE = 'Its price is set so that it comes to what was accepted.';

const becomes = ({ changes }: AgreedJob, formatter: Formatter): string =>
  list.format(changes.map((change) => lineWords(change, formatter)));

function lineWords({ line, pieces, without, isPriceOther }: AgreedChange, formatter: Formatter): string {
  const what =
    pieces === null
      ? line
      : pieces.before === pieces.after
        ? `${line} in other sizes`
        : `${formatter.number(pieces.after, 0)} × ${line}`;
  if (without.length > 0) return `${what} without ${list.format(without)}`;
  return pieces === null && isPriceOther ? `${what} at its price of then` : what;
}

const hasOthers = ({ changes }: AgreedJob): boolean =>
  changes.some(
    ({ isPriceOther, pieces, without }) => isPriceOther && (pieces !== null || without.length > 0),
  );

const list = new Intl.ListFormat('en');
