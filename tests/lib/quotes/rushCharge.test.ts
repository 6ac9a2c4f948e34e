import { describe, expect, it } from 'vitest';
import { rushCharge } from '@/lib/quotes/rushCharge';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { asking, clubCustomer, refused } from './quoteTools';

const charge = (asked: Parameters<typeof asking>[0], share: number) => rushCharge(asking(asked), grid, share);

// The pieces of the club come to 711.50.
describe('the charge for haste', () => {
  it('is its share of all pieces, to the coin', () => {
    expect(charge({}, 0.2)).toEqual({ amount: 142.3, currency: 'USD' });
    expect(charge({}, 0.5).amount).toBe(355.75);
    // 234.795.
    expect(charge({}, 0.33).amount).toBe(234.8);
  });

  it('is of every job, and of no other charge and no discount', () => {
    const jobs = [
      { jobId: 'club-order', input: club() },
      { jobId: 'again', input: clubWith({ 'job.lines.0.askedPrice': 20 }) },
    ];
    const order = {
      jobIds: ['club-order', 'again'],
      charges: [{ id: 'delivery', kind: 'delivery', what: 'Delivery', amount: 12 }],
      discount: { kind: 'share', share: 0.1, why: '' },
    };
    // 711.50 and 37 more: 1,460.00.
    expect(charge({ jobs, order }, 0.2).amount).toBe(292);
  });

  it('is as prices are written, also to whoever pays no tax that is in them', () => {
    const input = clubWith({ 'workshop.channels.0.taxMode': 'inside' });
    const customer = clubCustomer({ exemption: { number: 'X-1', validUntil: null, proof: null } });
    expect(charge({ input }, 0.2).amount).toBe(142.3);
    expect(charge({ input, customer, order: { exempt: true } }, 0.2).amount).toBe(142.3);
  });

  it('is known before anybody is named, and where the order does not pay without it', () => {
    expect(charge({ customer: null }, 0.2).amount).toBe(142.3);
    const input = clubWith({ 'job.lines.0.askedPrice': 5 });
    // 37 at 5.00, and up-charges of 1.50 for four and 2.50 for one: far under what they cost.
    expect(charge({ input }, 1).amount).toBe(193.5);
  });

  it('is known for a day that is too near to be quoted', () => {
    const order = { wantedOn: TODAY };
    expect(refused({ order }).map(({ kind }) => kind)).toEqual(['stopped']);
    expect(charge({ order }, 1).amount).toBe(711.5);
  });

  it('is none while a job stops, or is not here', () => {
    expect(charge({ input: clubWith({ 'job.lines.0.blankId': 'gone' }) }, 0.2).amount).toBeNull();
    expect(charge({ order: { jobIds: ['club-order', 'gone'] } }, 0.2).amount).toBeNull();
    expect(charge({ jobs: [], order: { jobIds: [] } }, 0.2).amount).toBeNull();
  });
});
