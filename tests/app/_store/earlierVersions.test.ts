import { describe, expect, it } from 'vitest';
import { kinds } from '@/lib/kinds/kinds';
import { readDocument } from '@/lib/stored/readDocument';
import { entryOf } from '@/lib/stored/registry';
import artwork1 from '@/tests/fixtures/stored/artwork1.json' with { type: 'json' };
import artwork2 from '@/tests/fixtures/stored/artwork2.json' with { type: 'json' };
import artwork3 from '@/tests/fixtures/stored/artwork3.json' with { type: 'json' };
import artwork4 from '@/tests/fixtures/stored/artwork4.json' with { type: 'json' };
import blank1 from '@/tests/fixtures/stored/blank1.json' with { type: 'json' };
import blank2 from '@/tests/fixtures/stored/blank2.json' with { type: 'json' };
import blank3 from '@/tests/fixtures/stored/blank3.json' with { type: 'json' };
import job1 from '@/tests/fixtures/stored/job1.json' with { type: 'json' };
import job2 from '@/tests/fixtures/stored/job2.json' with { type: 'json' };
import job3 from '@/tests/fixtures/stored/job3.json' with { type: 'json' };
import priceList1 from '@/tests/fixtures/stored/priceList1.json' with { type: 'json' };
import priceList2 from '@/tests/fixtures/stored/priceList2.json' with { type: 'json' };
import workshop1 from '@/tests/fixtures/stored/workshop1.json' with { type: 'json' };
import workshop2 from '@/tests/fixtures/stored/workshop2.json' with { type: 'json' };
import workshop3 from '@/tests/fixtures/stored/workshop3.json' with { type: 'json' };
import workshop4 from '@/tests/fixtures/stored/workshop4.json' with { type: 'json' };
import workshop5 from '@/tests/fixtures/stored/workshop5.json' with { type: 'json' };
import workshop6 from '@/tests/fixtures/stored/workshop6.json' with { type: 'json' };

/* Records as earlier versions of the app kept them: nothing of theirs is changed, and what is new is left open. */

const read = (raw: unknown) => {
  const reading = readDocument(raw, kinds);
  if (reading.state !== 'readable') throw new Error(JSON.stringify(reading.findings));
  const { kind, version, body } = reading.document;
  expect(version).toBe(entryOf(kinds, kind)?.version);
  return body;
};

const unsaid = {
  taxRounding: 'document',
  upChargeStep: null,
  charges: {
    minimumProfit: 0,
    artMinutesIncluded: 15,
    nameMinutes: 3,
    foldMinutes: 0.5,
    splitMinutes: 15,
    changeMinutes: 15,
    changeAtLeast: 0,
    normalWorkingDays: 10,
    rushShares: { underNormal: 0.2, underHalf: 0.5, nextDay: 1 },
  },
};
const untold = {
  ownCircuit: null,
  extensionLead: null,
  safetySheets: null,
  staysByPress: null,
  sewnLabel: null,
  humidity: null,
  humidityFits: null,
  leastPieces: null,
  claims: [],
};
const unrated = { rating: { openingMm: null, pressesPerDay: null, hotHoursPerDay: null } };
const undescribed = {
  finish: 'unknown',
  dyed: null,
  layers: 'unknown',
  coatedFace: 'unknown',
  coatingHardness: 'unknown',
  thicknessMm: null,
  lot: '',
  provenLot: '',
  childRisks: null,
};
const chosen = {
  listRule: 'capped',
  breaks: null,
  chosenBreaks: { count: 6, from: 1, judgedTo: 150 },
};
/** What nobody was asked about a printer and its paper until version 6. */
const inkUntold = {
  blackShare: { value: 0.5, unit: 'share', date: '2026-11-27', origin: 'typical' },
  lightInks: null,
  longestPageMm: null,
  colourProfile: null,
};
const unsetMedia = { mediaSetting: null };
const unsold = { shareOfRetail: null, sellingMinutesPerPiece: null, cashInDays: null };
const daysUnsold = { dayCost: null, dayPieces: null };

/** One hour from six in the evening on weekdays and four from nine on Saturday, as the free hours of all of them were. */
const week = {
  blocks: [
    { id: 'block-1', weekday: 0, fromMinute: 1080, minutes: 60 },
    { id: 'block-2', weekday: 1, fromMinute: 1080, minutes: 60 },
    { id: 'block-3', weekday: 2, fromMinute: 1080, minutes: 60 },
    { id: 'block-4', weekday: 3, fromMinute: 1080, minutes: 60 },
    { id: 'block-5', weekday: 4, fromMinute: 1080, minutes: 60 },
    { id: 'block-6', weekday: 5, fromMinute: 540, minutes: 240 },
  ],
  daysOff: [],
  seller: { name: '', tagline: '', address: '', contact: '', taxNumber: '', howToPay: '', logo: null },
  papers: { page: null, words: [], terms: [], ownTerms: [] },
  quoting: {
    validDays: 14,
    depositShare: 0.5,
    revisionsIncluded: 2,
    remakeDays: 7,
    claimDays: 14,
    creditDays: null,
    winChance: 0.4,
    idleDays: 5,
  },
};
const inBlocks = <Body extends { readonly freeHours: unknown }>({ freeHours: _, ...body }: Body) => ({
  ...body,
  ...week,
});

const told = ({ printers, sheets }: Pick<typeof workshop5.body, 'printers' | 'sheets'>) => ({
  printers: printers.map((printer) => ({ ...printer, ...inkUntold })),
  sheets: sheets.map((sheet) => ({ ...sheet, ...unsetMedia })),
});

describe('a workshop', () => {
  it('of version 1 has transfer paper, and the printed side is still to be found out', () => {
    expect(read(workshop1)).toEqual({
      ...inBlocks(workshop1.body),
      printers: workshop1.body.printers.map((printer) => ({
        ...printer,
        printedSide: null,
        ratedSheetsPerMonth: null,
        ...inkUntold,
      })),
      presses: workshop1.body.presses.map((press) => ({ ...press, ...unrated })),
      habits: untold,
      sheets: workshop1.body.sheets.map((sheet) => ({
        ...sheet,
        paper: 'transfer',
        form: 'cut',
        rollLengthMm: null,
        ...unsetMedia,
      })),
      channels: workshop1.body.channels.map((channel) => ({ ...channel, ...unsold, ...daysUnsold })),
      policy: { ...workshop1.body.policy, ...unsaid, ...chosen },
    });
  });

  it('of version 2 has cut sheets, no terms of selling and nothing noted of ink', () => {
    expect(read(workshop2)).toEqual({
      ...inBlocks(workshop2.body),
      printers: workshop2.body.printers.map((printer) => ({
        ...printer,
        ratedSheetsPerMonth: null,
        ...inkUntold,
      })),
      presses: workshop2.body.presses.map((press) => ({ ...press, ...unrated })),
      habits: untold,
      sheets: workshop2.body.sheets.map((sheet) => ({
        ...sheet,
        form: 'cut',
        rollLengthMm: null,
        ...unsetMedia,
      })),
      channels: workshop2.body.channels.map((channel) => ({ ...channel, ...unsold, ...daysUnsold })),
      policy: { ...workshop2.body.policy, ...unsaid, ...chosen },
    });
  });
});

describe('a workshop of version 3', () => {
  it('has no selling days', () => {
    expect(read(workshop3)).toMatchObject({
      channels: workshop3.body.channels.map((channel) => ({ ...channel, ...daysUnsold })),
    });
  });
});

describe('a workshop of version 4', () => {
  it('has all but its ink record, which is entries', () => {
    const { inkRecord: _, ...rest } = workshop4.body;
    expect(read(workshop4)).toEqual({ ...inBlocks(rest), ...told(rest) });
  });
});

describe('a workshop of version 5', () => {
  it('prints the typical share of the grey with black, and nothing is noted of light inks and menus', () => {
    expect(read(workshop5)).toEqual({ ...inBlocks(workshop5.body), ...told(workshop5.body) });
  });

  it('keeps all grey in black where refills have measured the level, which they did so', () => {
    const laydown = { ...workshop5.body.rates.laydown, origin: 'measured', count: 240 };
    const body = { ...workshop5.body, rates: { ...workshop5.body.rates, laydown } };
    expect(read({ ...workshop5, body })).toMatchObject({
      rates: { laydown },
      printers: workshop5.body.printers.map(() => ({ blackShare: { value: 1, origin: 'typical' } })),
    });
  });
});

describe('a workshop of version 6', () => {
  it('has its free hours from a time to a time, and papers are still to be told about', () => {
    expect(read(workshop6)).toEqual(inBlocks(workshop6.body));
  });

  it.each([
    ['nothing said', null, null],
    ['no hours at all', [0, 0, 0, 0, 0, 0, 0], []],
    [
      'a whole day and an odd hour',
      [0, 24, 0, 0, 0, 7.3, 0],
      [
        { id: 'block-2', weekday: 1, fromMinute: 0, minutes: 1440 },
        { id: 'block-6', weekday: 5, fromMinute: 540, minutes: 438 },
      ],
    ],
    [
      'an evening of seven hours',
      [7, 0, 0, 0, 0, 0, 0],
      [{ id: 'block-1', weekday: 0, fromMinute: 1020, minutes: 420 }],
    ],
  ])('keeps its hours with %s', (_, freeHours, blocks) => {
    expect(read({ ...workshop6, body: { ...workshop6.body, freeHours } })).toMatchObject({ blocks });
  });
});

describe('a job', () => {
  it.each([
    [1, job1],
    [2, job2],
  ])('of version %d lays each print out by itself, with suggested prices and unmeasured edges', (_, job) => {
    expect(read(job)).toEqual({
      ...job.body,
      state: 'draft',
      archivedOn: null,
      gang: 'apart',
      lines: job.body.lines.map((line) => ({
        ...line,
        upCharging: 'separate',
        ownPrices: [],
        selling: null,
        breaks: null,
        nameList: '',
        audience: null,
        askedStart: null,
        placements: line.placements.map((placement) => ({
          ...placement,
          bleedMm: null,
          safeZoneMm: null,
          rim: { belowMm: null, inside: false },
          recipe: {
            ...placement.recipe,
            steps: {
              lintRoll: null,
              tapeEdges: null,
              coolSeconds: null,
              evenCooling: null,
              piecesPerPress: 1,
            },
          },
        })),
      })),
    });
  });
});

describe('a job of version 3', () => {
  it('is being priced, and in the list', () => {
    expect(read(job3)).toMatchObject({ state: 'draft', archivedOn: null });
  });
});

describe('how lists are reckoned', () => {
  it('is the workshop’s for lines that stood as listed, which nobody had chosen', () => {
    expect(read(job3)).toMatchObject({ lines: job3.body.lines.map(() => ({ selling: null, breaks: null })) });
  });

  it.each([
    ['cap', 'capped'],
    ['tariff', 'setUpApart'],
    ['slab', 'slab'],
  ])('%s is named %s now', (was, is) => {
    const lines = job3.body.lines.map((line) => ({ ...line, selling: was }));
    expect(read({ ...job3, body: { ...job3.body, lines } })).toMatchObject({
      lines: lines.map(() => ({ selling: is })),
    });
  });

  it('lets the sums choose breaks that nobody had changed, and keeps a maker’s own', () => {
    expect(read(workshop3)).toMatchObject({ policy: chosen });
    const policy = { ...workshop3.body.policy, breaks: [1, 5, 25] };
    expect(read({ ...workshop3, body: { ...workshop3.body, policy } })).toMatchObject({
      policy: { breaks: [1, 5, 25] },
    });
  });
});

describe('a price list', () => {
  it('of version 1 keeps what its next version offers; what went out is no part of it any more', () => {
    const { versions: _, ...draft } = priceList1.body;
    expect(read(priceList1)).toEqual(draft);
  });

  it('of version 2 has no versions any more, which are papers', () => {
    const { versions: _, ...draft } = priceList2.body;
    expect(read(priceList2)).toEqual(draft);
  });
});

describe('a blank', () => {
  it('of version 1 was not measured around', () => {
    const sizes = blank1.body.sizes.map(({ onHand: _, ...size }) => ({ ...size, wrap: null }));
    expect(read(blank1)).toEqual({ ...blank1.body, sizes, suppliedBy: 'maker', traits: undescribed });
  });

  it('of version 2 was bought by its maker', () => {
    const sizes = blank2.body.sizes.map(({ onHand: _, ...size }) => size);
    expect(read(blank2)).toEqual({ ...blank2.body, sizes, suppliedBy: 'maker', traits: undescribed });
  });

  it('of version 3 keeps all but its stock, which leaves as entries', () => {
    const sizes = blank3.body.sizes.map(({ onHand: _, ...size }) => size);
    expect(read(blank3)).toEqual({ ...blank3.body, sizes });
  });
});

describe('an artwork', () => {
  it('of version 1 has its own figures and no picture', () => {
    const { approvedVersion: _, ...body } = artwork1.body;
    expect(read(artwork1)).toEqual({ ...body, picture: null, finest: null, colourMatch: 'free' });
  });

  it('of version 2 has no smallest parts', () => {
    const { approvedVersion: _, ...body } = artwork2.body;
    expect(read(artwork2)).toEqual({ ...body, finest: null, colourMatch: 'free' });
  });

  it('of version 3 keeps all but its approval, which leaves as an entry', () => {
    const { approvedVersion: _, ...body } = artwork3.body;
    expect(read(artwork3)).toEqual(body);
  });

  it('of version 4 has a picture whose grey nobody measured, and neither profile nor fonts are named', () => {
    const { picture } = artwork4.body;
    expect(read(artwork4)).toEqual({
      ...artwork4.body,
      picture: { ...picture, grey: null, profile: null, liveFonts: [] },
    });
    const tagged = (colourTag: string) => ({
      ...artwork4,
      body: { ...artwork4.body, picture: { ...picture, colourTag } },
    });
    expect(read(tagged('sRGB'))).toMatchObject({ picture: { profile: 'sRGB' } });
    expect(read(tagged('profile'))).toMatchObject({ picture: { profile: 'unknown' } });
  });
});
