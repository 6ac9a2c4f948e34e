import type { OrderNumber } from '@/shared/schemas/orderEvents';
import type { NotedOf } from './orderFacts';

/**
 * The number that an enquiry noted now will likely get, to be shown until the write gives it one: enquiries that were
 * taken back have used theirs, which nobody sees here.
 *
 * @param letter of this device; null while it has numbered nothing
 */
export function likelyNumber(
  events: readonly NotedOf<'orderEvent'>[],
  letter: string | null,
  year: number,
): OrderNumber {
  const counts = events.flatMap(({ body: { step } }) =>
    step.what === 'enquired' && step.number.year === year && step.number.letter === letter
      ? [step.number.count]
      : [],
  );
  return { year, count: Math.max(0, ...counts) + 1, letter: letter ?? 'A' };
}
