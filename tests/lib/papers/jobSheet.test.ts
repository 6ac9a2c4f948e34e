import { describe, expect, it } from 'vitest';
import type { JobSheetBody } from '@/lib/papers/bodies/jobSheetPaper';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const body: JobSheetBody = {
  page: 'a4',
  language: 'en',
  locale: 'en-US',
  workshop: 'Placeholder Press',
  job: 'Club shirts',
  pieces: 37,
  facts: [{ name: 'wanted by', value: 'December 14, 2026' }],
  steps: [
    {
      heading: 'Print 53 sheets',
      aside: 'Plain A4; 40 min, unattended',
      ticks: ['nozzle check', 'mirrored'],
      lines: [],
      drawings: [],
      sizes: [],
    },
    {
      heading: 'Back picture',
      aside: 'Flat press',
      ticks: [],
      lines: ['200 °C, 60 s'],
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
      sizes: [
        { size: 'S', good: 4, spares: 1 },
        { size: 'L', good: 11, spares: 0 },
        { size: 'One size', good: 500, spares: 9 },
      ],
    },
  ],
  watch: ['Press the back first.'],
};

describe('a job sheet', () => {
  it('has its steps in order, numbered, with a square for each good piece', async () => {
    const { bytes } = await writtenPaper({ kind: 'jobSheet', body });
    const { lines, text, pages } = await readPages(bytes);
    const at = ['1. Print 53 sheets', '2. Back picture', 'Watch for'].map((words) => text.indexOf(words));
    expect(at.every((place, index) => place > (at[index - 1] ?? -1))).toBe(true);
    for (const told of [
      '200 °C, 60 s',
      'nozzle check',
      'pieces 37',
      'Press the back first.',
      'S 4 1',
      'L 11 0',
    ])
      expect(text).toContain(told);
    // Two steps to tick and 4 + 11 good pieces; 500 are counted. A square is 9 points wide.
    expect(pages.flatMap(({ across }) => across).filter((wide) => Math.abs(wide - 9) < 0.01)).toHaveLength(
      17,
    );
    expect(lines).toContain('One size 500 9');
  });
});
