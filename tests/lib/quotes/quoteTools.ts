import { type MadeQuote, makeQuote, type QuoteDraft } from '@/lib/quotes/makeQuote';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import type { QuoteObstacle } from '@/lib/quotes/quoteObstacle';
import { type Customer, customerSchema } from '@/shared/schemas/customer';
import { type Order, orderSchema } from '@/shared/schemas/order';
import type { JobInput } from '@/shared/schemas/request';
import { club, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

export const clubCustomer = (more: Partial<Customer> = {}): Customer =>
  customerSchema.parse({
    name: 'Exampleton Ramblers Club',
    people: [{ id: 'alex', name: 'Alex Placeholder' }],
    ...more,
  });

export const anOrder = (more: object = {}): Order =>
  orderSchema.parse({ name: 'Club shirts', customerId: 'ramblers', jobIds: ['club-order'], ...more });

interface Asking {
  readonly order?: object;
  readonly input?: JobInput;
  readonly jobs?: QuoteAsked['jobs'];
  readonly customer?: Customer | null;
  readonly versions?: QuoteAsked['versions'];
  readonly day?: string;
  readonly load?: QuoteAsked['load'];
}

/** The order of the club with the worked job, changed as told. */
export const asking = ({
  order = {},
  input = club(),
  jobs = [{ jobId: 'club-order', input }],
  customer = clubCustomer(),
  versions = [],
  day = TODAY,
  load = [],
}: Asking = {}): QuoteAsked => ({
  orderId: 'club',
  order: anOrder(order),
  orderNumber: { year: 2026, count: 14, letter: 'A' },
  jobs,
  customer,
  versions,
  day,
  load,
});

export const made = (asked: Asking = {}): MadeQuote => makeQuote(asking(asked), grid);

/** The quote as it would go out; a refusal fails the test. */
export function ready(asked: Asking = {}): QuoteDraft {
  const outcome = made(asked);
  if (outcome.kind !== 'ready') throw new Error(JSON.stringify(outcome.obstacles));
  return outcome.draft;
}

/** What stands in its way; a quote that goes out fails the test. */
export function refused(asked: Asking = {}): readonly QuoteObstacle[] {
  const outcome = made(asked);
  if (outcome.kind !== 'refused') throw new Error('the quote is ready');
  return outcome.obstacles;
}

/** Three more in L, and the back picture only. */
export const clubAlternatives = [
  { id: 'forty', kind: 'pieces', jobId: 'club-order', lineId: 'shirts', quantity: 40, size: 'L' },
  { id: 'backOnly', kind: 'without', jobId: 'club-order', lineId: 'shirts', placementId: 'badge' },
];
