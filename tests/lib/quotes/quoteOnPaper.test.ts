import { describe, expect, it } from 'vitest';
import type { QuoteDraft } from '@/lib/quotes/makeQuote';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { type Quote, quoteSchema } from '@/shared/schemas/orderPapers';
import { clubWith } from '@/tests/fixtures/clubJob';
import { seller, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';
import { plainQuote } from './plainQuote';
import { clubAlternatives, clubCustomer, ready } from './quoteTools';

const issued = (body: QuoteDraft['body']): Quote =>
  quoteBody({ body, risks: [] }, { count: 1, letter: 'A' }, ({ id }) => id);

const written = async (quote: Quote) => (await writtenPaper({ kind: 'quote', body: quote })).bytes;

const FIGURE = /(−?)([\d,]+(?:\.\d+)?)$/;

/** @returns whole minor units of the figure that a line ends with; null where it ends with none. */
function figureOf(line: string): number | null {
  const [, sign, figure] = FIGURE.exec(line) ?? [];
  if (figure === undefined) return null;
  return Number(figure.replaceAll(/[.,]/g, '')) * (sign === '' ? 1 : -1);
}

/** What a reader finds in the table of a quote: the amount of each row, and the sums by their names. */
async function tableOf(quote: Quote) {
  const { lines } = await readPages(await written(quote));
  const head = lines.findIndex((line) => line.endsWith(`pieces each ${quote.currency}`));
  const rest = lines.slice(head + 1);
  const sums = rest.findIndex((line) => /together|without tax|tax [\d.]+%|^Total/.test(line));
  const sumOf = (name: RegExp) => {
    const line = rest.find((one) => name.test(one));
    return line === undefined ? null : figureOf(line);
  };
  return {
    rows: rest.slice(0, sums).flatMap((line) => figureOf(line) ?? []),
    discount: sumOf(/^discount/),
    subtotal: sumOf(/without tax/),
    tax: sumOf(/tax [\d.]+%/),
    total: sumOf(/^Total/),
    deposit: sumOf(/^deposit/),
    balance: sumOf(/^balance/),
  };
}

const sizes = [
  { quantity: 3, blank: 1 },
  { quantity: 9, blank: 2 },
];
const quotes: readonly (readonly [string, () => QuoteDraft['body']])[] = [
  ['of the worked order', () => ready({ order: { alternatives: clubAlternatives } }).body],
  [
    'with a charge, a credit and a discount',
    () =>
      ready({
        order: {
          charges: [
            { id: 'rush', kind: 'rush', what: 'Rush', amount: 50 },
            { id: 'sample', kind: 'own', what: 'The sample you paid', amount: -12.34 },
          ],
          discount: { kind: 'share', share: 0.1, why: 'club' },
        },
      }).body,
  ],
  ['with tax on each line', () => ready({ input: clubWith({ 'workshop.policy.taxRounding': 'line' }) }).body],
  ['in yen', () => plainQuote({ sizes, asked: 1055, currency: 'JPY', tax: { mode: 'added', share: 0.08 } })],
  [
    'in dinars',
    () => plainQuote({ sizes, asked: 4.575, currency: 'KWD', tax: { mode: 'added', share: 0.05 } }),
  ],
  ['with tax inside', () => plainQuote({ sizes, asked: 12.99, tax: { mode: 'inside', share: 0.2 } })],
  [
    'of wholesale prices to whoever pays no tax',
    () => plainQuote({ sizes, asked: 8, exemption: 'RS-1234', tax: { mode: 'added', share: 0.07 } }),
  ],
];

describe('a quote read back by another reader', () => {
  it.each(quotes)('%s says what its body says, to the last coin', async (_, body) => {
    const quote = issued(body());
    const { tax, sums, discount, deposit, balance } = quote;
    const table = await tableOf(quote);
    const off = discount?.amount ?? 0;
    expect(table.rows.reduce((sum, amount) => sum + amount, 0)).toBe(sums.subtotal + off);
    expect(table).toMatchObject({
      discount: off === 0 ? null : -off,
      subtotal: tax.mode === 'added' ? sums.subtotal : null,
      tax: tax.mode === 'none' ? null : sums.tax,
      total: sums.total,
      ...{ deposit, balance },
    });
  });

  it('has the tax of its rows, each rounded, where it says so', async () => {
    // Three sizes at 19.35 stand in one row: 58.05 × 0.07 is 4.0635. Beside them 12.50 × 0.07 is 0.875.
    const one = { quantity: 1, blank: 1 };
    const quote = issued(
      plainQuote({
        sizes: [one, one, one, { ...one, asked: 12.5 }],
        asked: 19.35,
        tax: { mode: 'added', share: 0.07, rounding: 'line' },
      }),
    );
    const table = await tableOf(quote);
    expect(table.rows).toEqual([5805, 1250]);
    expect([table.tax, table.total]).toEqual([406 + 88, 7055 + 494]);
    expect((await readPages(await written(quote))).text).toContain('Tax is rounded for each line.');
  });

  it('has both alternatives with their sums, in order', async () => {
    const quote = issued(ready({ order: { alternatives: clubAlternatives } }).body);
    const { lines } = await readPages(await written(quote));
    // 749.00 × 1.07 and 619.00 × 1.07 beside 711.50 × 1.07.
    expect(lines).toContain('761.31 801.43 662.33');
  });
});

describe('the worked quote, whatever is said on it', () => {
  const customer = clubCustomer({
    addresses: [{ id: 'hut', purpose: 'goods', text: 'Club hut\n3 Sample Lane\nExampleton' }],
  });
  const order = {
    alternatives: clubAlternatives,
    delivery: { way: 'brought', addressId: 'hut', byPerson: false },
  };

  it.each(['a4', 'letter'] as const)('stands on one page of %s with the lines to sign on', async (page) => {
    const papers = { page, words: [], terms: [], ownTerms: [] };
    const input = clubWith({ 'workshop.papers': papers, 'workshop.seller': { ...seller, logo: null } });
    const { pages, text } = await readPages(await written(issued(ready({ input, customer, order }).body)));
    expect(pages).toHaveLength(1);
    expect(text).toContain('Brought to Club hut, 3 Sample Lane, Exampleton.');
    expect(text).toContain('3 more in L, 12.50 each');
    expect(text).toContain('accepted, name signature date');
  });
});

describe('a quote that went out', () => {
  const body = () => issued(ready({ order: { alternatives: clubAlternatives } }).body);

  it('writes the same file from its body as it is kept, whatever the rates are by then', async () => {
    const quote = body();
    const file = await written(quote);
    const dearer = issued(ready({ input: clubWith({ 'workshop.rates.wage.value': 30 }) }).body);
    expect(dearer.owner.fullCost).toBeGreaterThan(quote.owner.fullCost);
    const kept = quoteSchema.parse(JSON.parse(JSON.stringify(quote)));
    expect(Buffer.compare(await written(kept), file)).toBe(0);
  });
});
