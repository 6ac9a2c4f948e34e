import { describe, expect, it } from 'vitest';
import type { JobPress, JobSheetBody, JobStep } from '@/lib/papers/bodies/jobSheetPaper';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const step: JobStep = {
  heading: 'Print 53 sheets',
  aside: 'Plain A4; 40 min, unattended',
  ticks: ['nozzle check', 'mirrored'],
  lines: [],
  tally: { words: '', labels: [] },
  grid: null,
};

const press: JobPress = {
  heading: 'Back picture',
  aside: 'Flat press',
  strong: '200 °C · 60 s',
  lines: ['8 × 9.6 in, back'],
  drawings: [
    {
      shape: 'back',
      caption: 'back',
      prints: [
        {
          name: 'Hill path picture',
          size: '8 × 9.6 in',
          position: 'middle',
          widthMm: 203.2,
          heightMm: 243.84,
          dropMm: 88.9,
          picture: null,
        },
      ],
    },
  ],
  pair: null,
  sizes: [
    { size: 'S', good: 4, spares: 1, isShared: false },
    { size: 'L', good: 11, spares: 0, isShared: false },
  ],
  perTick: 1,
};

const body: JobSheetBody = {
  page: 'a4',
  language: 'en',
  locale: 'en-US',
  workshop: 'Placeholder Press',
  of: 'job',
  job: 'Club shirts',
  pieces: 37,
  facts: [{ name: 'wanted by', value: 'December 14, 2026' }],
  before: [step],
  presses: [press],
  after: [{ ...step, heading: 'Pack', ticks: [], tally: { words: 'Faults:', labels: ['ghost', 'blur'] } }],
  watch: [{ lead: 'Mind:', text: 'Press the back first.' }],
};

const read = async (changed: Partial<JobSheetBody> = {}) =>
  readPages((await writtenPaper({ kind: 'jobSheet', body: { ...body, ...changed } })).bytes);

/** A square to tick is 9 points wide. */
const squares = ({ pages }: Awaited<ReturnType<typeof read>>): number =>
  pages.flatMap(({ across }) => across).filter((wide) => Math.abs(wide - 9) < 0.01).length;

describe('a job sheet', () => {
  it('has its steps in order, numbered, with a square for each good piece', async () => {
    const sheet = await read();
    const { text } = sheet;
    const at = ['1. Print 53 sheets', '2. Back picture', '3. Pack'].map((words) => text.indexOf(words));
    expect(at.every((place, index) => place > (at[index - 1] ?? -1))).toBe(true);
    for (const told of [
      '200 °C · 60 s',
      'nozzle check',
      'pieces 37',
      'Mind: Press the back first.',
      'S 4',
      'L 11 none',
      'tick each good one',
      'Faults:',
    ])
      expect(text).toContain(told);
    // Two things to tick, 4 + 11 good pieces and one that may be spoiled, whose hatching is as wide once more.
    expect(squares(sheet)).toBe(19);
  });

  it('has a square for several good pieces where each would take too many, and says for how many', async () => {
    const many = {
      ...press,
      perTick: 20,
      sizes: [{ size: 'One size', good: 510, spares: 9, isShared: false }],
    };
    const sheet = await read({ presses: [many] });
    expect(sheet.text).toContain('a square: up to 20 good');
    // Two things to tick and 510 / 20 = 25.5 squares.
    expect(squares(sheet)).toBe(28);
  });

  it('has blanks of several lines in a grid, with a square for each size of each line', async () => {
    const grid = {
      heads: ['S', 'M'],
      last: 'in all',
      rows: [
        { name: 'Fern shirt', ticks: ['5', '7'], last: '12' },
        { name: 'Otter shirt', ticks: ['4', ''], last: '4' },
      ],
    };
    const sheet = await read({ before: [{ ...step, ticks: [], grid }], presses: [] });
    for (const line of ['S M in all', 'Fern shirt 5 7 12', 'Otter shirt 4 4'])
      expect(sheet.lines).toContain(line);
    expect(squares(sheet)).toBe(3);
  });

  it.each([1, 2, 3, 7, 40])('tells each of %i prints once, none over the edge of its page', async (count) => {
    const presses = Array.from({ length: count }, (_, at) => ({ ...press, heading: `Print no ${at + 1}` }));
    const { text, pages } = await read({ presses });
    for (let at = 1; at <= count; at += 1)
      expect(text.match(new RegExp(`(^|\\s)${at + 1}\\. Print no ${at}\\b`, 'g'))).toHaveLength(1);
    for (const { width, texts } of pages)
      expect(texts.every(({ x, y, width: wide }) => x >= 0 && x + wide <= width && y > 20)).toBe(true);
  });

  it('goes on over several pages where a print has more sizes than one holds', async () => {
    const sizes = Array.from({ length: 90 }, (_, at) => ({
      size: `Size ${at}`,
      good: 30,
      spares: 1,
      isShared: false,
    }));
    for (const presses of [[{ ...press, sizes }], Array.from({ length: 3 }, () => ({ ...press, sizes }))]) {
      const { pages, text } = await read({ presses });
      expect(pages.length).toBeGreaterThan(1);
      expect(text.match(/Size 89\b/g)).toHaveLength(presses.length);
      for (const { texts } of pages) expect(texts.every(({ y }) => y > 20)).toBe(true);
    }
  });
});

describe('a sheet of figures that are the maker’s alone', () => {
  it('has every row of its tables with the total of each beneath', async () => {
    const { bytes } = await writtenPaper({
      kind: 'ownSheet',
      body: {
        page: 'letter',
        language: 'en',
        workshop: 'Placeholder Press',
        kind: 'For you alone',
        name: 'Club shirts',
        facts: [],
        says: 'Costs in USD.',
        tables: [
          {
            columns: [
              { head: 'What it costs', isFigure: false },
              { head: 'USD', isFigure: true },
            ],
            rows: [
              ['Blanks', '188.20'],
              ['Ink', '5.29'],
            ],
            total: { name: 'Full cost', value: '193.49' },
          },
        ],
        foot: '7 h of your time.',
      },
    });
    const { lines, pages } = await readPages(bytes);
    expect(pages.map(({ width, height }) => [width, height])).toEqual([[612, 792]]);
    for (const line of ['For you alone', 'Club shirts', 'Costs in USD.', 'Blanks 188.20', 'Ink 5.29'])
      expect(lines.join('\n')).toContain(line);
    expect(lines).toContain('Full cost 193.49');
    expect(lines).toContain('7 h of your time.');
  });
});
