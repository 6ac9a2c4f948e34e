import { expect, it } from 'vitest';
import { clubCustomer } from '@/lib/examples/clubEnquiry';
import { quoteLacks } from '@/lib/orders/quoteLacks';
import { club } from '@/tests/fixtures/clubJob';
import { anOrder } from '@/tests/fixtures/orderLog';

const { job } = club();
const none = {
  ...job,
  lines: job.lines.map((line) => ({
    ...line,
    quantities: line.quantities.map((one) => ({ ...one, quantity: 0 })),
  })),
};

it('names what a quote lacks: whom it is for, then a job, then pieces in one of them', () => {
  const lacks = (jobIds: readonly string[], jobs: readonly (typeof job)[], customer = clubCustomer) =>
    quoteLacks(anOrder({ jobIds: [...jobIds] }), customer, jobs);
  expect(quoteLacks(anOrder(), null, [job])).toBe('customer');
  expect(lacks(['a'], [job], { ...clubCustomer, erasedOn: '2026-11-26' })).toBe('customer');
  expect(lacks([], [])).toBe('job');
  expect(lacks(['a'], [none])).toBe('pieces');
  // A job that is named and not here has no pieces that anybody could quote.
  expect(lacks(['a'], [])).toBe('pieces');
  expect(lacks(['a', 'b'], [none, job])).toBeNull();
});
