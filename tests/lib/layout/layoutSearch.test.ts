import { describe, expect, it } from 'vitest';
import { layoutQuestions, thoroughInput } from '@/lib/costing/layoutQuestions';
import { priceJob } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import type { SharedQuestion } from '@/lib/layout/sharedQuestion';
import { furtherSheets } from '@/lib/layout/sharedSheets';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid, laidOut } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

/** As many slices as are let through, or all. */
function lookOn(search: LayoutSearch, questions: readonly SharedQuestion[], most = Infinity): number {
  let slices = 0;
  for (const _ of search.goOn(questions)) {
    slices += 1;
    if (slices >= most) break;
  }
  return slices;
}

const countOf = (search: LayoutSearch, questions: readonly SharedQuestion[]) =>
  Object.values(search.known(questions)).map(({ count }) => count);

const thorough = (input: JobInput) => thoroughInput(input, new LayoutSearch());

describe('a search for better layouts of shared sheets', () => {
  it('has the first layout at once, and a sheet fewer once it has ended', () => {
    const search = new LayoutSearch();
    const questions = layoutQuestions(sharedJob());
    expect(countOf(search, questions)).toEqual([4]);
    expect(search.isAtEnd(questions)).toBe(false);
    expect(search.spared(questions)).toEqual({ sheets: 0, rollMm: null });
    lookOn(search, questions);
    expect(countOf(search, questions)).toEqual([3]);
    expect(search.isAtEnd(questions)).toBe(true);
    expect(search.spared(questions)).toEqual({ sheets: 1, rollMm: null });
  });

  it('goes on where it was left, whatever was asked between', () => {
    let slices = 0;
    const counted = new LayoutSearch(function* (...asked) {
      const search = furtherSheets(...asked);
      for (;;) {
        const { done, value } = search.next();
        if (done === true) return value;
        slices += 1;
        yield value;
      }
    });
    // Eleven prints of two sizes more: no layout meets the bound, and the search goes to its end.
    const long = layoutQuestions(sharedJob({ 'job.lines.0.quantities.0.quantity': 17 }));
    lookOn(counted, long, 3);
    lookOn(counted, layoutQuestions(sharedJob()));
    const before = slices;
    lookOn(counted, long, 2);
    expect(slices).toBe(before + 2);
  });

  it('asks nothing where prints lie apart, a stop stands, or a line has one print', () => {
    expect(layoutQuestions(sharedJob({ 'job.gang': 'apart' }))).toEqual([]);
    expect(layoutQuestions(sharedJob({ 'job.lines.1.placements.0.prints.0.widthMm': 900 }))).toEqual([]);
    expect(layoutQuestions(sharedJob())).toHaveLength(1);
  });

  it('asks the same of the same sizes and numbers in another order', () => {
    const input = sharedJob();
    const turned = { ...input, job: { ...input.job, lines: input.job.lines.toReversed() } };
    expect(layoutQuestions(turned).map(({ key }) => key)).toEqual(
      layoutQuestions(input).map(({ key }) => key),
    );
  });

  it('is asked for each line that is listed by itself as well', () => {
    const input = clubWith({ 'job.gang': 'together' });
    const two = { ...input, job: { ...input.job, lines: twice(input.job.lines) } };
    expect(layoutQuestions(two)).toHaveLength(2);
  });
});

describe('a job with a layout that was found before', () => {
  it('has it in prices, drawing and studies alike', () => {
    const first = sharedJob();
    const better = thorough(first);
    const sheetsOf = (input: JobInput) => ({
      priced: Math.round(priceJob(input, grid).layout?.reduce((sum, { sheets }) => sum + sheets, 0) ?? 0),
      drawn: plannedSheets(laidOut(input)).count,
      told: sheetsAnswer(input, grid)?.plan.count,
      chosen: sheetsAnswer(input, grid)?.choices.flatMap((choice) =>
        choice.kind === 'costed' && choice.isPresent ? [choice.sheets] : [],
      ),
    });
    expect(sheetsOf(first)).toEqual({ priced: 4, drawn: 4, told: 4, chosen: [4] });
    expect(sheetsOf(better)).toEqual({ priced: 3, drawn: 3, told: 3, chosen: [3] });
  });

  it('costs less by the paper and printing of that sheet', () => {
    const sheets = (input: JobInput) => {
      const { costSheet } = priceJob(input, grid);
      if (costSheet === null) throw new Error('the job is stopped');
      return { sheets: wholeJob(costSheet, 'sheets'), cost: costSheet.fullCost };
    };
    const [first, better] = [sheets(sharedJob()), sheets(thorough(sharedJob()))];
    expect(better.sheets).toBeLessThan(first.sheets);
    expect(better.cost).toBeLessThan(first.cost);
  });

  it('takes no layout that answers another question', () => {
    const { layouts } = thorough(sharedJob());
    const other = sharedJob({ 'job.lines.0.quantities.0.quantity': 5 });
    expect(plannedSheets(laidOut({ ...other, layouts })).sheets).toEqual(
      plannedSheets(laidOut(other)).sheets,
    );
  });
});

/** The same line again under another id. */
const twice = (lines: JobInput['job']['lines']): JobInput['job']['lines'] =>
  lines.flatMap((line) => [
    line,
    {
      ...line,
      id: `${line.id}-again`,
      placements: line.placements.map((placement) => ({ ...placement, id: `${placement.id}-again` })),
    },
  ]);
