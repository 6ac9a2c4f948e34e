import { describe, expect, it } from 'vitest';
import { workOfJob } from '@/lib/making/list/workOfJob';
import { orderSchema } from '@/shared/schemas/order';

const order = (jobIds: readonly string[], archivedOn: string | null = null) =>
  orderSchema.parse({ name: 'Club', customerId: 'club', jobIds, archivedOn });

describe('a job as a work of a run', () => {
  it('is made for the order it stands in', () => {
    const orders = { other: order(['mugs']), club: order(['caps', 'shirts']) };
    expect(workOfJob('shirts', orders)).toEqual({ jobId: 'shirts', orderId: 'club', stallDayId: null });
  });

  it('is made for stock where no order has it', () => {
    expect(workOfJob('shirts', { other: order(['mugs']) }).orderId).toBe(null);
    expect(workOfJob('shirts', {}).orderId).toBe(null);
  });

  it('is made for the order that is not put away, where several have it', () => {
    const orders = { old: order(['shirts'], '2026-01-08'), open: order(['shirts']) };
    expect(workOfJob('shirts', orders).orderId).toBe('open');
    expect(workOfJob('shirts', { old: orders.old }).orderId).toBe('old');
  });
});
