import type { Link } from '@/lib/stored/registry';

/**
 * @param path where in the body the work is told
 * @returns the job of a work, and for whom it is made
 */
export const workLinks = (
  {
    jobId,
    orderId,
    stallDayId = null,
  }: { readonly jobId: string; readonly orderId: string | null; readonly stallDayId?: string | null },
  path: Link['path'],
): readonly Link[] => [
  { to: 'job', id: jobId, path: [...path, 'jobId'] },
  ...(orderId === null ? [] : [{ to: 'order', id: orderId, path: [...path, 'orderId'] }]),
  ...(stallDayId === null ? [] : [{ to: 'stallDay', id: stallDayId, path: [...path, 'stallDayId'] }]),
];
