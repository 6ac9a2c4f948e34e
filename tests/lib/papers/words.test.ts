import { describe, expect, it } from 'vitest';
import { versionNumber } from '@/lib/papers/bodies/heading';
import { starterTerms } from '@/lib/papers/terms/starterTerms';
import { filledTerms, type TermFacts, termTexts } from '@/lib/papers/terms/termTexts';
import { englishLabels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import { sizeGroups } from '@/lib/papers/words/sizeGroups';
import { sizeRow } from '@/lib/papers/words/sizeRow';
import { orderNumberText, seriesNumberText } from '@/shared/orderNumberText';
import { papersSchema, termKeys, untoldPapers } from '@/shared/schemas/seller';

describe('labels of papers', () => {
  it('are the workshop’s own where it wrote some, the language with its country before the language', () => {
    const words = [
      { language: 'de-CH', key: 'quote', text: 'Offerte' },
      { language: 'de', key: 'quote', text: 'Angebot' },
      { language: 'de', key: 'each', text: 'je Stück' },
    ];
    expect(labelsFor('de-CH', words)).toMatchObject({ quote: 'Offerte', each: 'je Stück' });
    expect(labelsFor('de', words).quote).toBe('Angebot');
    expect(labelsFor('en', words)).toMatchObject({ quote: 'Quote', each: 'each' });
  });
});

describe('sizes', () => {
  const sizes = (...rows: readonly (readonly [string, number, number])[]) =>
    rows.map(([size, quantity, each]) => ({ size, quantity, each, total: quantity * each }));
  const rowsOf = (...rows: readonly (readonly [string, number, number])[]) =>
    sizeGroups(sizes(...rows)).map((group) => [
      sizeRow(group, labelsFor('en', [])).replaceAll(/[\u2068\u2069]/g, ''),
      group.quantity,
      group.total,
    ]);

  it('of one price that follow each other stand together', () => {
    expect(
      rowsOf(['S', 4, 1900], ['M', 9, 1900], ['L', 11, 1900], ['XL', 8, 1900], ['2XL', 4, 2050]),
    ).toEqual([
      ['S to XL', 32, 60800],
      ['2XL', 4, 8200],
    ]);
  });

  it('that do not follow each other stand alone', () => {
    expect(rowsOf(['S', 1, 100], ['M', 1, 200], ['L', 1, 100])).toHaveLength(3);
  });

  it('between which one has no pieces are named each, since a range would name that too', () => {
    expect(rowsOf(['S', 1, 100], ['M', 0, 100], ['L', 1, 100], ['XL', 2, 100])).toEqual([
      ['S, L, XL', 4, 400],
    ]);
  });
});

describe('figures', () => {
  const of = (language: string, locale: string, currency = 'EUR') =>
    figuresOf({ language, locale, length: 'mm', currency });

  it('have the marks of the locale and the days the words of the language', () => {
    expect(of('de', 'de-DE').money(123450)).toBe('1.234,50');
    expect(of('de', 'de-DE').day('2026-12-14')).toBe('14. Dezember 2026');
    expect(of('en', 'de-DE').day('2026-12-14')).toBe('14 December 2026');
    expect(of('en', 'en-US').day('2026-12-14')).toBe('December 14, 2026');
    expect(of('de', 'de-DE').share(0.077)).toBe('7,7\u00A0%');
  });

  it('write minus as wide as a figure', () => {
    expect(of('en', 'en-US').money(-100)).toBe('−1.00');
  });
});

describe('numbers of papers', () => {
  it('have the year, the count and the letter of the device', () => {
    expect(orderNumberText({ year: 2026, count: 14, letter: 'A' })).toBe('26-014A');
    expect(seriesNumberText({ count: 7, letter: 'B' }, '2027-01-02')).toBe('27-007B');
    expect(seriesNumberText({ count: 1234, letter: null }, '2027-01-02')).toBe('27-1234');
  });
});

describe('versions of papers', () => {
  it('bear the letter of their device where it is not that of the order', () => {
    const order = { year: 2026, count: 14, letter: 'A' };
    const issuedOn = '2026-11-27';
    const said = (letter: string, count: number) =>
      versionNumber({ order, number: { count, letter }, issuedOn }, englishLabels);
    expect([said('A', 2), said('B', 2)]).toEqual(['26-014A, version 2', '26-014A, version 2B']);
  });
});

describe('terms', () => {
  const termsFor = (
    papers: Parameters<typeof termTexts>[0],
    labels: Parameters<typeof termTexts>[1],
    language: string,
    known: TermFacts,
    ownGarments = false,
  ) => filledTerms(termTexts(papers, labels, language, ownGarments), known);
  const facts: TermFacts = {
    deposit: '380.66 USD',
    balance: '380.65 USD',
    total: '761.31 USD',
    creditDays: null,
    ready: 'December 14, 2026',
    approveBy: 'November 30, 2026',
    leadDays: '10',
    revisions: '2',
    remakeDays: '7',
    claimDays: '14',
    spares: '2',
  };

  it('begin with our own words and the figures of the order', () => {
    const terms = termsFor(untoldPapers, englishLabels, 'en', facts);
    expect(terms.find(({ heading }) => heading === 'Payment')?.text).toBe(
      'To pay now: 380.66 USD. Before the goods go out: 380.65 USD.',
    );
    // All but that of garments the customer brings.
    expect(terms).toHaveLength(termKeys.length - 1);
    expect(termsFor(untoldPapers, englishLabels, 'en', facts, true)).toHaveLength(termKeys.length);
  });

  it('leave out a sentence whose figure is not known, and a term of which nothing is left', () => {
    const terms = [{ language: 'en', key: 'delivery', text: 'Ready on {ready}.' }] as const;
    const made = termsFor({ terms: [...terms], ownTerms: [] }, englishLabels, 'en', {
      ...facts,
      ready: null,
      deposit: null,
    });
    expect(made.find(({ heading }) => heading === 'Delivery')).toBeUndefined();
    expect(made.find(({ heading }) => heading === 'Payment')?.text).not.toContain('To pay now');
    for (const { text } of made) expect(text).not.toMatch(/[{}]/);
  });

  it('are the workshop’s own where it wrote some; an empty one is left off', () => {
    const made = termsFor(
      {
        terms: [
          { language: 'en', key: 'colour', text: 'As near as we can.' },
          { language: 'en', key: 'late', text: '' },
        ],
        ownTerms: [{ id: 'own', language: null, heading: 'Parking', text: 'In the yard.' }],
      },
      englishLabels,
      'en-GB',
      facts,
    );
    expect(made.find(({ heading }) => heading === 'Colour')?.text).toBe('As near as we can.');
    expect(made.some(({ heading }) => heading === 'Paid or fetched late')).toBe(false);
    expect(made.at(-1)).toEqual({ heading: 'Parking', text: 'In the yard.' });
  });

  it('of the workshop alone stand on papers of their language, and on all where they name none', () => {
    const ownTerms = [
      { id: 'yard', language: 'en', heading: 'Parking', text: 'In the yard.' },
      { id: 'hof', language: 'de', heading: 'Parken', text: 'Im Hof.' },
      { id: 'vat', language: null, heading: 'Tax', text: 'A-1.' },
      { id: 'schweiz', language: 'de-CH', heading: 'Feiertage', text: 'Am 1. August geschlossen.' },
    ];
    const own = (language: string) =>
      termsFor({ terms: [], ownTerms }, englishLabels, language, facts)
        .slice(termKeys.length - 1)
        .map(({ heading }) => heading);
    expect(own('en-GB')).toEqual(['Parking', 'Tax']);
    expect(own('DE-ch')).toEqual(['Parken', 'Tax', 'Feiertage']);
    expect(own('fr')).toEqual(['Tax']);
  });

  it('of the workshop alone that were kept before they had a language stand on all papers', () => {
    const kept = { ownTerms: [{ id: 'own', heading: 'Parking', text: 'In the yard.' }] };
    expect(papersSchema.parse(kept).ownTerms).toEqual([
      { id: 'own', language: null, heading: 'Parking', text: 'In the yard.' },
    ]);
  });

  it('say nothing of the local authority to the customer', () => {
    for (const { text } of Object.values(starterTerms)) expect(text).not.toMatch(/authority/);
  });
});
