import { expect, test } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { jobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, mugs, TODAY, told } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

function factsOf(input: JobInput) {
  const { layout, costSheet } = priceJob(input, grid);
  if (layout === null || costSheet === null) throw new Error('the job is stopped');
  return jobSheetFacts(input, { layout, costSheet });
}

test('the club’s shirts take 45 blanks, 8 of them spare, and the only 3XL has none', () => {
  const { lines, take, spare, covered } = factsOf(club());
  // The trade’s worked example: every size covered at 75 % takes these, and reaches 78.9 %.
  expect(lines[0]?.sizes).toEqual([
    { size: 'S', wanted: 4, take: 5, spares: 1, isShared: false },
    { size: 'M', wanted: 9, take: 11, spares: 2, isShared: false },
    { size: 'L', wanted: 11, take: 13, spares: 2, isShared: false },
    { size: 'XL', wanted: 8, take: 10, spares: 2, isShared: false },
    { size: '2XL', wanted: 4, take: 5, spares: 1, isShared: false },
    { size: '3XL', wanted: 1, take: 1, spares: 0, isShared: false },
  ]);
  expect([take, spare]).toEqual([45, 8]);
  expect(covered).toBeCloseTo(0.789, 3);
});

test('blanks that the customer brings are laid out as many as were asked for, 95 % sure', () => {
  const input = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
  const { lines, take, covered } = factsOf(input);
  // Worked by hand: S 6, M 12, L 14, XL 10, 2XL 6, 3XL 2.
  expect(lines[0]?.sizes.map((size) => size.take)).toEqual([6, 12, 14, 10, 6, 2]);
  expect(told(input, 'QTY-08')).toMatchObject([{ variant: 'ask', facts: { ask: take } }]);
  expect(covered).toBeGreaterThanOrEqual(0.95);
});

test('they take 53 sheets, 47 of them for the good pieces, with two tests', () => {
  // 37 backs at one a sheet and 37 badges at four a sheet are 37 + 10; expected with all losses 52.9.
  const { sheets, goodSheets, tests } = factsOf(club());
  expect([sheets, goodSheets, tests]).toEqual([53, 47, 2]);
});

test('prints stand in press order, each with the sizes that get it', () => {
  const { placements } = factsOf(club());
  expect(placements.map(({ placement }) => placement.name)).toEqual(['Back picture', 'Chest badge']);
  expect(placements[1]?.sizes.map(({ size }) => size)).toEqual(['S', 'M', 'L', 'XL', '2XL', '3XL']);
});

test('a print that some sizes get larger is told with those sizes', () => {
  const prints = [
    { sizes: null, widthMm: 89, heightMm: 89 },
    { sizes: ['3XL'], widthMm: 96, heightMm: 96 },
  ];
  const { placements } = factsOf(clubWith({ 'job.lines.0.placements.1.prints': prints }));
  expect(placements[1]?.prints.map(({ widthMm, sizes }) => [widthMm, sizes])).toEqual([
    [89, ['S', 'M', 'L', 'XL', '2XL']],
    [96, ['3XL']],
  ]);
});

test('each line has its own stack', () => {
  const { lines, pieces } = factsOf(mugs());
  expect(lines.map(({ name, sizes }) => [name, sizes[0]?.wanted])).toEqual([
    ['Fern mug', 12],
    ['Otter mug', 12],
    ['Star Map mug', 12],
  ]);
  expect(pieces).toBe(36);
});

test('of a roll the length is told that is printed', () => {
  // Two backs across, turned, 37 of them are 19 rows of 8 in and a gutter: at least 19 × 203.2 mm.
  const { rollMm } = factsOf(
    clubWith({
      'workshop.sheets.0.form': 'roll',
      'workshop.sheets.0.widthMm': 609.6,
      'workshop.sheets.0.heightMm': 1000,
      'workshop.sheets.0.price': { value: 1.2, unit: 'money/m', date: TODAY, origin: 'yours' },
    }),
  );
  expect(rollMm).toBeGreaterThan(19 * 203.2);
  expect(factsOf(club()).rollMm).toBeNull();
});

test('two lines on one blank share the spares of a size, and each gets its part of them', () => {
  const alone = clubWith({ 'job.lines.0.quantities': [{ size: 'M', quantity: 10 }] });
  const [line] = alone.job.lines;
  if (line === undefined) throw new Error('the job has no line');
  const placements = line.placements.map((placement) => ({ ...placement, id: `more-${placement.id}` }));
  const second = { ...line, id: 'more', name: 'More', placements };
  const both = { ...alone, job: { ...alone.job, lines: [line, second] } };
  const { lines, take, covered, shared } = factsOf(both);
  // Twenty good ones at p = 0.965 × 0.98 × 0.99 = 0.93624: 22 hold them 83.8 % of the time, 21 only 60.9 %.
  expect(lines.map((one) => one.take)).toEqual([11, 11]);
  expect(take).toBe(22);
  expect(shared.map(({ size, spares }) => [size, spares])).toEqual([['M', 2]]);
  expect(lines.flatMap(({ sizes }) => sizes)).toMatchObject([
    { take: 11, spares: 2, isShared: true },
    { take: 11, spares: 2, isShared: true },
  ]);
  expect(covered).toBeCloseTo(0.838, 3);
});
