import type { Order } from '@/shared/schemas/order';

/** @returns whether a line takes its price from a list, so that the one of its job says nothing. */
export const isListed = ({ lines }: Pick<Order, 'lines'>, jobId: string, lineId: string): boolean =>
  lines.some((one) => one.jobId === jobId && one.lineId === lineId && one.price.from === 'list');
