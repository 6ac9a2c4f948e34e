import { describe, expect, it } from 'vitest';
import { breakPiecesWords } from '@/app/_words/docket/breakPiecesWords';
import { findingCountWords } from '@/app/_words/docket/findingCountWords';
import {
  layoutWords,
  moreSheetsWords,
  printSizesWords,
  recipeWords,
} from '@/app/_words/docket/jobSheetWords';
import { jobInWords } from '@/app/_words/docket/jobWords';
import { findingWords } from '@/app/_words/findings/findingWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { jobsWords, leftOutWords, piecesOfJob } from '@/app/_words/jobs/jobListWords';
import { mixedTaxWords, refusalWords } from '@/app/_words/priceLists/offerWords';
import { lostWords, movedWords } from '@/app/_words/store/movedWords';
import { priceJob } from '@/lib/costing/priceJob';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import { itemDescription } from '@/lib/priceLists/itemSays';
import type { Finding } from '@/shared/finding';
import { recipeSchema } from '@/shared/schemas/job';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { findingSamples } from '@/tests/fixtures/findingSamples/findingSamples';
import { wordFaults } from '@/tests/tools/words/wordFaults';

const inches: TextContext = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'floz', distance: 'mi' },
};
const metric: TextContext = {
  locale: 'de-DE',
  currency: 'EUR',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
};

describe('a fault in words is noticed', () => {
  it.each([
    ['1 pieces of it', 'several of one'],
    ['1 shirt pay 20.00', 'one that does as several do'],
    ['1 working day are left', 'one that does as several do'],
    ['names a artwork', 'a before a vowel'],
    ['an shirt', 'an before a consonant'],
    ['costs undefined', 'a gap'],
    ['costs NaN USD', 'a gap'],
    ['79 presss a day', 'a plural nobody says'],
    ['2 batchs', 'a plural nobody says'],
    ['3 boxs', 'a plural nobody says'],
    ['a price of {price}', 'a gap'],
    ['two  spaces', 'a gap'],
  ])('%s', (text, fault) => expect(wordFaults(text)).toEqual([expect.stringContaining(fault)]));

  it.each([
    'from 1 piece, an hour of 11 pieces, 21 sheets',
    'a unit, a used one, a one-off, an S, an 8 × 10 in print',
    'a European size and an XL',
    '1 is enough; 0,1 minutes',
    '1 shirt pays 20.00, 11 shirts pay 30.00',
  ])('but nothing in: %s', (text) => expect(wordFaults(text)).toEqual([]));
});

/** The same finding with one of everything that is counted in it. */
function ofOne(finding: Finding): Finding {
  const one = (value: unknown): unknown => {
    if (typeof value === 'number') return 1;
    if (Array.isArray(value)) return value.map(one);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, one(part)]));
  };
  const fix = finding.fix === null ? null : { ...finding.fix, facts: one(finding.fix.facts) };
  // Every number of a finding's facts may be any number, so the type stays what it was.
  return { ...finding, facts: one(finding.facts), fix } as Finding;
}

const named = findingSamples.map(
  (finding) => [[finding.id, finding.variant, finding.severity].filter(Boolean).join(' '), finding] as const,
);

const wordsOf = (finding: Finding): readonly string[] =>
  [inches, metric].flatMap((context) => {
    const { sentence, detail, fixLabel } = findingWords(finding, context);
    return fixLabel === null ? [sentence, detail] : [sentence, detail, fixLabel];
  });

describe('the words of a finding', () => {
  it.each(named)('%s are without fault', (_, finding) => {
    expect(wordsOf(finding).flatMap(wordFaults)).toEqual([]);
  });

  it.each(named)('%s are without fault where there is one of everything', (_, finding) => {
    expect(wordsOf(ofOne(finding)).flatMap(wordFaults)).toEqual([]);
  });
});

/* Sentences made of counts and names, with one of everything and with names that begin like “artwork”. */
const formatter = formatterFor(inches);
const { job, blanks } = club();
const [line] = job.lines;
if (line === undefined) throw new Error('the club order has a line');
const oneShirt = { ...job, lines: [{ ...line, quantities: [{ size: 'S', quantity: 1 }] }] };
const print = { ...priceJob(club(), grid).layout?.[0], pieces: 1, sheets: 1, perSheet: 1 } as LaidOutPrint;
const samples: Readonly<Record<string, readonly string[]>> = {
  'the list of jobs': [
    piecesOfJob(oneShirt, blanks, formatter),
    ...[
      { pays: 1, less: 1, stopped: 1 },
      { pays: 0, less: 2, stopped: 2 },
      { pays: 12, less: 0, stopped: 0 },
    ].flatMap((counts) => [...jobsWords(counts, 18, inches), ...jobsWords(counts, null, inches)]),
    leftOutWords({ wantedOn: '2026-12-14', waivers: 1 }, formatter) ?? '',
  ],
  'a job in one line': [jobInWords({ ...club(), job: oneShirt }, formatter)],
  'the job sheet': [
    layoutWords('Otter', [print], formatter),
    layoutWords('Otter', [{ ...print, ganged: { own: 1, others: 1 } }], formatter),
    layoutWords(
      'Otter',
      [{ ...print, roll: { lengthMm: 1, pitchMm: 1, marginMm: 1, gutterMm: 1 } }],
      formatter,
    ),
    moreSheetsWords(1, 1, formatter) ?? '',
    printSizesWords([print, print], formatter),
    ...recipeWords(line.placements[0]?.recipe ?? recipeSchema.parse({}), formatter),
  ],
  'a span of pieces': [
    breakPiecesWords({ from: 1, to: 1 }),
    breakPiecesWords({ from: 1, to: null }),
    breakPiecesWords({ from: 1, to: 5 }),
  ],
  'how many findings there are': [
    findingCountWords(findingSamples.slice(0, 1)),
    findingCountWords(findingSamples.filter(({ severity }) => severity === 'caution').slice(0, 1)),
  ],
  'what undo did': [
    movedWords({ direction: 'undo', label: 'Price of an apron', names: ['Otter', 'Mug'] }),
    lostWords('redo', 'Price'),
  ],
  'why an item cannot be issued': [
    ...(
      [
        { kind: 'falls', at: 2 },
        { kind: 'loses', from: 1, at: 1, margin: -0.1 },
        { kind: 'gone' },
        { kind: 'noLine' },
        { kind: 'noTaxMode' },
        { kind: 'stopped', why: null },
      ] as const
    ).flatMap((offer) => Object.values(refusalWords(offer, 'Otter', inches) ?? {})),
    ...Object.values(
      mixedTaxWords([
        { name: 'Otter', taxMode: 'added' },
        { name: 'Apron', taxMode: 'none' },
      ]),
    ),
  ],
};

describe('the words made of counts and names', () => {
  it.each(Object.entries(samples))('of %s are without fault', (_, texts) => {
    expect(texts.filter((text) => text !== '').flatMap(wordFaults)).toEqual([]);
  });
});

describe('names that a maker typed', () => {
  it('keep their letters in what a price list says of an item', () => {
    expect(itemDescription(club(), line)).toBe(
      'White shirt, 100 % polyester, with Back picture and Chest badge',
    );
  });
});
