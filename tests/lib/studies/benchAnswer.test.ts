import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { jobSheetFacts } from '@/lib/jobSheet/jobSheet';
import { benchAnswer } from '@/lib/studies/bench/benchAnswer';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

it('a job whose day is past still takes its time of the bench', () => {
  const inTime = benchAnswer(clubWith({ 'job.wantedOn': '2026-12-11' }), grid);
  expect(inTime?.work.press?.pieces).toBe(37);
  expect(benchAnswer(clubWith({ 'job.wantedOn': '2026-11-01' }), grid)).toEqual(inTime);
});

it('a job with any other stop has no work that is known', () => {
  expect(benchAnswer(clubWith({ 'job.lines.0.blankId': 'gone' }), grid)).toBeNull();
});

describe('the blanks that a job takes', () => {
  it('are those of its sheet for the bench, with their prices and the freight', () => {
    const blanks = benchAnswer(club(), grid)?.blanks;
    // The trade’s worked example: 45 blanks for 37 pieces, 4.60 up to XL, then 6.10 and 7.10.
    expect(blanks).toEqual({
      freight: 9.5,
      sizes: [
        ['S', 4, 5, 4.6],
        ['M', 9, 11, 4.6],
        ['L', 11, 13, 4.6],
        ['XL', 8, 10, 4.6],
        ['2XL', 4, 5, 6.1],
        ['3XL', 1, 1, 7.1],
      ].map(([size, pieces, take, each]) => ({ blankId: 'white-shirt', size, pieces, take, each })),
    });
  });

  it.each([
    ['shirts', club()],
    ['shirts that the customer brings', clubWith({ 'blank:white-shirt.suppliedBy': 'customer' })],
    ['mugs in three lines', mugs()],
  ])('are as many as the docket lays out: %s', (_, input) => {
    const { layout, costSheet } = priceJob(input, grid);
    if (layout === null || costSheet === null) throw new Error('the job is stopped');
    const { lines } = jobSheetFacts(input, { layout, costSheet });
    expect(benchAnswer(input, grid)?.blanks.sizes.map(({ take }) => take)).toEqual(
      lines.flatMap(({ sizes }) => sizes.map(({ take }) => take)),
    );
  });

  it('tell no freight where nobody said one, for that is not 0', () => {
    expect(benchAnswer(clubWith({ 'job.freightIn': null }), grid)?.blanks.freight).toBeNull();
  });
});
