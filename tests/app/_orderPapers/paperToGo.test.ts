import { describe, expect, it } from 'vitest';
import {
  AnotherWasFirst,
  isStillWanted,
  likelyPaperNumber,
  type PaperToGo,
  paperToMake,
} from '@/app/_orderPapers/issuing/paperToGo';
import { clubInvoice, clubQuote } from '@/tests/fixtures/orderPapers';

const invoice: PaperToGo = { kind: 'invoice', bodyOf: (number) => ({ ...clubInvoice, number }) };
const quote: PaperToGo = { kind: 'quote', bodyOf: (number) => ({ ...clubQuote, number }) };
const file = { name: 'paper.pdf', content: new Uint8Array([1]) };

const making = (paper: PaperToGo, mayGo: () => boolean = () => true) =>
  paperToMake(paper, { orderId: 'order-1', day: '2026-12-12', write: async () => file, mayGo });

describe('a paper that is made for its number', () => {
  it('is not made again as an invoice where another tab was given the number, for it may be of the same order', async () => {
    const making1 = making(invoice);
    expect(await making1.file({ count: 1, letter: 'A' })).toBe(file);
    await expect(making1.file({ count: 2, letter: 'A' })).rejects.toBeInstanceOf(AnotherWasFirst);
  });

  it('is made again as the next version of a quote', async () => {
    const versions = making(quote);
    await versions.file({ count: 1, letter: 'A' });
    expect(await versions.file({ count: 2, letter: 'A' })).toBe(file);
    expect(versions.body({ count: 2, letter: 'A' }).number.count).toBe(2);
  });

  it('is not made where it may not go out any more', async () => {
    await expect(making(invoice, () => false).file({ count: 1, letter: 'A' })).rejects.toBeInstanceOf(
      AnotherWasFirst,
    );
  });
});

it('an invoice goes out only while it bills what is to be billed, for another tab may have billed a part', () => {
  const billing = (change: Partial<typeof clubInvoice>): PaperToGo => ({
    kind: 'invoice',
    bodyOf: (number) => ({ ...clubInvoice, ...change, number }),
  });
  const ofChange = billing({ goods: [], changeIds: ['phone-4'] });
  expect(isStillWanted(invoice, null)).toBe(false);
  expect(isStillWanted(invoice, billing({ due: 0 }))).toBe(true);
  expect(isStillWanted(invoice, billing({ goods: [] }))).toBe(false);
  expect(isStillWanted(ofChange, billing({ goods: [], changeIds: ['phone-5'] }))).toBe(false);
  expect(isStillWanted(quote, quote)).toBe(true);
});

it('versions of a quote are counted by each device, without a gap', () => {
  const papers = [
    { series: 'quote order-1', number: { count: 1, letter: 'A' } },
    { series: 'quote order-1', number: { count: 2, letter: 'A' } },
    { series: 'quote order-1', number: { count: 1, letter: 'B' } },
  ];
  const of = { kind: 'quote', orderId: 'order-1', day: '2026-12-12', papers } as const;
  expect(likelyPaperNumber({ ...of, letter: 'A' })).toEqual({ count: 3, letter: 'A' });
  expect(likelyPaperNumber({ ...of, letter: 'B' })).toEqual({ count: 2, letter: 'B' });
});
