import { describe, expect, it } from 'vitest';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { orderPaperSeries, orderSeries } from '@/lib/kinds/orderSeries';
import { paperKinds } from '@/lib/kinds/paperKinds';

describe('what papers of orders are numbered in', () => {
  it('a quote and its confirmation count the versions of one order', () => {
    expect(orderPaperSeries('quote', 'order-1', 2026)).toBe('quote order-1');
    expect(orderPaperSeries('confirmation', 'order-1', 2027)).toBe('confirmation order-1');
  });

  it('all else counts by kind and year, so that it begins again with the year', () => {
    expect(orderPaperSeries('invoice', 'order-1', 2026)).toBe('invoice 26');
    expect(orderPaperSeries('creditNote', 'order-2', 2027)).toBe('creditNote 27');
    expect(orderSeries(2008)).toBe('order 08');
  });

  it('papers of orders count on each device, all others over all, and no paper of an order is without its file', () => {
    const byDevice = Object.entries(paperKinds).flatMap(([name, kind]) =>
      'numbering' in kind && kind.numbering === 'device' ? [name] : [],
    );
    expect(byDevice.toSorted()).toEqual([
      'confirmation',
      'creditNote',
      'deliveryNote',
      'invoice',
      'paymentRequest',
      'proof',
      'quote',
      'receipt',
    ]);
    const withoutFile = Object.entries(paperKinds).flatMap(([name, kind]) =>
      'needsFile' in kind && kind.needsFile === true ? [] : [name],
    );
    expect(withoutFile).toEqual(['priceListVersion', 'stallPlan', 'dayClose', 'runStandard']);
  });

  it('of the steps of an order only the enquiry bears a number', () => {
    const body = { orderId: 'order-1', day: '2026-11-27' };
    const number = { year: 2026, count: 1, letter: 'A' };
    const enquired = entryKinds.orderEvent.numberIn?.({ ...body, step: { what: 'enquired', number } });
    expect(enquired?.series).toBe('order 26');
    expect(enquired?.with({ count: 14, letter: 'K' })).toEqual({
      ...body,
      step: { what: 'enquired', number: { year: 2026, count: 14, letter: 'K' } },
    });
    expect(entryKinds.orderEvent.numberIn?.({ ...body, step: { what: 'packed', note: '' } })).toBeNull();
  });
});
