import type { Formatter } from '@/app/_words/formatter';
import { jobFacts } from '@/lib/drafts/jobFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';

/** What is asked for and what is in the jobs, while nothing is quoted yet. */
interface AskedAndMade {
  readonly order: Pick<Order, 'askedPieces' | 'jobIds'>;
  /** Its jobs that are here. */
  readonly jobs: readonly Pick<Job, 'lines'>[];
  readonly standing: Pick<OrderStanding, 'state' | 'side'>;
}

/** @returns that the jobs hold other than was asked for; null where they agree, or nobody can tell. */
export function askedPiecesWords(
  { order: { askedPieces, jobIds }, jobs, standing: { state, side } }: AskedAndMade,
  formatter: Formatter,
): string | null {
  if (askedPieces === null || jobs.length === 0 || jobs.length < jobIds.length) return null;
  // What went out at a price was looked at by both.
  if (state !== 'enquiry' || side.side !== 'open') return null;
  const pieces = jobs.reduce((sum, job) => sum + jobFacts(job).pieces, 0);
  if (pieces === askedPieces) return null;
  const are = (count: number) => (count === 1 ? 'is' : 'are');
  const were = askedPieces === 1 ? 'was' : 'were';
  return `${formatter.number(askedPieces, 0)} ${were} asked for, ${formatter.number(pieces, 0)} ${are(pieces)} in the ${jobs.length === 1 ? 'job' : 'jobs'}.`;
}
