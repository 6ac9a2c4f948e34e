import { costInput } from '@/lib/costing/costInput';
import { jobFigures } from '@/lib/costing/jobFigures';
import { priceJob } from '@/lib/costing/priceJob';
import { fairShirts } from '@/lib/examples/fairJobs';
import { Grid } from '@/lib/grid/evaluateGrid';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import type { JobInput } from '@/shared/schemas/request';
import { BARE_ENGINE, BareEngine } from '@/tests/bench/yardsticks/bareEngine';
import { cellsAsked } from '@/tests/bench/yardsticks/cellsAsked';
import { type BenchRow, timeRow } from './benchRow';
import { timesBeside } from './measure';

type EditedRate = 'inkPrice' | 'wage';
type Answer = (edited: JobInput, grid: Grid) => void;

/** @returns what it costs to work everything out anew after a rate was typed. */
export function benchEdits(club: JobInput): readonly BenchRow[] {
  const grid = new Grid();
  const row = (what: string, count: number, input: JobInput, name: EditedRate, answer: Answer) => {
    const bare = new BareEngine(cellsAsked((counted) => answer(input, counted)));
    const spent = timesBeside(
      count,
      editsOf(input, name),
      (edited) => answer(edited, grid),
      () => bare.refill(),
    );
    return timeRow(what, spent, BARE_ENGINE);
  };
  const fair = fairShirts('2026-11-25');
  return [
    row(
      'one edit → every figure, 6 sizes, 30 prices',
      200,
      pricesOf(atBreaks(club), 30),
      'inkPrice',
      priceJob,
    ),
    row('one edit → every figure, 6 sizes, breaks chosen by the sums', 200, club, 'inkPrice', priceJob),
    row('one edit → every figure, 4 lines at one price a size', 200, pricesOf(fair, 24), 'wage', priceJob),
    row('one edit → every figure, 4 lines, breaks chosen, sessions', 100, sessions(fair), 'wage', priceJob),
    row(
      'one edit → every figure, 12 sizes, 60 prices and a curve of 100 (budget 50)',
      100,
      pricesOf(twelveSizes(atBreaks(club)), 60),
      'wage',
      withCurve,
    ),
    row('one edit → the figures of a job among others', 200, club, 'wage', jobFigures),
  ];
}

/** Five breaks, as most makers type them. */
const atBreaks = ({ workshop, ...input }: JobInput): JobInput => ({
  ...input,
  workshop: { ...workshop, policy: { ...workshop.policy, breaks: [1, 6, 12, 24, 48] } },
});

/** The longest search there is: capped lists of every line, and sessions that the lines fill together. */
function sessions({ job, ...input }: JobInput): JobInput {
  const lines = job.lines.map((line) => ({ ...line, selling: 'capped' as const }));
  return { ...input, job: { ...job, piecesPerSession: 48, lines } };
}

/** A bench that names a number of prices means it. */
function pricesOf(input: JobInput, count: number): JobInput {
  const prices = priceJob(input, new Grid()).prices?.table.length;
  if (prices !== count) throw new Error(`the bench means ${count} prices and has ${prices}`);
  return input;
}

function withCurve(edited: JobInput, grid: Grid): void {
  priceJob(edited, grid);
  const costed = costInput(edited, grid);
  if (costed === null) throw new Error('the job of the bench cannot be costed');
  batchCurve(costed, grid, { from: 1, to: 100, priceEach: 20 });
}

/** The club order on a shirt that is also cut tall: twelve sizes. */
function twelveSizes(club: JobInput): JobInput {
  const [line] = club.job.lines;
  const blank = club.blanks[line?.blankId ?? ''];
  if (line === undefined || blank === undefined) throw new Error('the example has no line on a blank');
  const tall = (name: string) => `${name} tall`;
  const sizes = [...blank.sizes, ...blank.sizes.map((size) => ({ ...size, name: tall(size.name) }))];
  const quantities = [
    ...line.quantities,
    ...line.quantities.map((one) => ({ ...one, size: tall(one.size) })),
  ];
  return {
    ...club,
    blanks: { ...club.blanks, [line.blankId]: { ...blank, sizes } },
    job: { ...club.job, wantedOn: '2027-02-26', lines: [{ ...line, quantities }] },
  };
}

/** @returns the documents with one rate typed anew, a little other at every call. */
function editsOf(input: JobInput, name: EditedRate): () => JobInput {
  let step = 0;
  return () => {
    step += 1;
    const rate = input.workshop.rates[name];
    if (rate === null) throw new Error(`the bench needs ${name}`);
    const rates = { ...input.workshop.rates, [name]: { ...rate, value: rate.value * (1 + step / 1e4) } };
    return { ...input, workshop: { ...input.workshop, rates } };
  };
}
