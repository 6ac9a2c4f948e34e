import { describe, expect, it } from 'vitest';
import { type ChannelOffer, customaryTerms } from '@/lib/studies/channels/channelOffer';
import { compareChannels } from '@/lib/studies/channels/compareChannels';
import { wholesaleRule } from '@/lib/studies/channels/wholesaleRule';
import { club } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const job = costed(club());

const own: ChannelOffer = {
  kind: 'order',
  name: 'Own orders',
  retail: 28,
  shareOfRetail: 1,
  taxMode: 'added',
  tax: 0.07,
  commission: 0,
  commissionBase: 'withoutTax',
  cardFee: 0.029,
  cardFixedFee: 0.3,
  cardShare: 0.5,
  cardPayments: 1,
  piecesPerTicket: 1,
  sellingMinutes: 0,
  sellingCost: 0,
  cashInDays: 0,
};
const stall: ChannelOffer = {
  ...own,
  kind: 'stall',
  name: 'Stall',
  taxMode: 'inside',
  cardFee: 0.026,
  cardFixedFee: 0.1,
  cardShare: 0.75,
  cardPayments: 0,
  piecesPerTicket: 1.35,
  sellingMinutes: 420,
};
const shop: ChannelOffer = {
  ...own,
  ...customaryTerms.wholesale,
  kind: 'wholesale',
  name: 'Shop',
  taxMode: 'none',
  tax: 0,
  cardShare: 0,
  cardPayments: 0,
};
const backend: ChannelOffer = {
  ...shop,
  ...customaryTerms.consignment,
  kind: 'consignment',
  name: 'Shelf',
  commission: 0.4,
};

describe('compareChannels', () => {
  const compared = compareChannels(job, grid, [stall, own, shop, backend]);
  if (!compared.ok) throw new Error(compared.problem.kind);
  const [atStall, byOrder, inShop, onBackend] = compared.value;

  it('invoices what each channel pays: all of it, half of it in wholesale', () => {
    expect(atStall?.revenue).toBeCloseTo((37 * 28) / 1.07, 9);
    expect(byOrder?.revenue).toBeCloseTo(37 * 28, 9);
    expect(inShop?.revenue).toBeCloseTo(37 * 14, 9);
    expect(onBackend?.revenue).toBeCloseTo(37 * 28, 9);
  });

  it('takes the fees of each: card, tickets, the shelf’s forty of a hundred', () => {
    expect(byOrder?.fees).toBeCloseTo(1036 * 0.029 * 0.5 * 1.07 + 0.3, 9);
    expect(atStall?.fees).toBeCloseTo(1036 * 0.026 * 0.75 + (37 * 0.1 * 0.75) / 1.35, 9);
    expect(inShop?.fees).toBe(0);
    expect(onBackend?.fees).toBeCloseTo(1036 * 0.4, 9);
    expect(onBackend?.net).toBeCloseTo(1036 * 0.6, 9);
  });

  it('counts the hours of selling: seven at 18.00 and 4.20', () => {
    expect(atStall?.costToServe).toBeCloseTo(7 * 22.2, 9);
    expect(byOrder?.costToServe).toBe(0);
  });

  it('leaves profit and pay over all hours', () => {
    const hours = 452.2819239824512 / 60 + 7;
    expect(atStall?.profit).toBeCloseTo((atStall?.net ?? 0) - (atStall?.fullCost ?? 0), 9);
    // Own pay of all hours is in the full cost.
    expect(atStall?.payPerHour).toBeCloseTo((atStall?.profit ?? 0) / hours + 18, 6);
    expect(inShop?.profit).toBeCloseTo(37 * 14 - job.sheet.fullCost, 9);
    expect(inShop?.cashInDays).toBe(30);
  });

  it.each([
    ['commission', 1.2, 'notAShare'],
    ['retail', 0, 'notAnAmount'],
    ['sellingMinutes', Number.NaN, 'notAnAmount'],
    ['shareOfRetail', 0, 'notAShare'],
  ] as const)('says so where %s is %d', (field, value, kind) => {
    const answer = compareChannels(job, grid, [own, { ...stall, [field]: value }]);
    expect(answer.ok ? null : answer.problem).toEqual({ kind, field, value, name: 'Stall' });
  });
});

describe('wholesaleRule', () => {
  it('wants retail at twice what shops pay, or declines', () => {
    // 11.20 ÷ 0.8 = 14, twice that 28.
    const even = wholesaleRule(11.2, 0.2, 28);
    expect(even.ok && even.value).toEqual({
      wholesale: expect.closeTo(14, 12),
      leastRetail: expect.closeTo(28, 12),
      holds: true,
    });
    const under = wholesaleRule(11.2, 0.2, 27.99);
    expect(under.ok && under.value.holds).toBe(false);
  });

  it('has no price for a margin of all of it', () => {
    expect(wholesaleRule(11.2, 1, 28)).toEqual({ ok: false, problem: { kind: 'notAMargin', margin: 1 } });
  });
});
