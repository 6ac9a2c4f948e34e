import type { OrderLine } from '@/shared/schemas/order';

/** @returns lines of an order with what it says of one of them changed; what else it says of that stays. */
export function withLine(
  lines: readonly OrderLine[],
  { jobId, lineId }: Pick<OrderLine, 'jobId' | 'lineId'>,
  to: Partial<Omit<OrderLine, 'jobId' | 'lineId'>>,
): OrderLine[] {
  const isIt = (one: OrderLine) => one.jobId === jobId && one.lineId === lineId;
  return lines.some(isIt)
    ? lines.map((one) => (isIt(one) ? { ...one, ...to } : one))
    : [...lines, { jobId, lineId, price: { from: 'job' }, names: [], ...to }];
}
