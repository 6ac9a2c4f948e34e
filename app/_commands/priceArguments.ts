import type { AskedBreaks } from '@/app/_requests/withBreaks';
import type { CurveQuestion } from '@/lib/studies/curve/batchCurve';
import { type CurveRangeProblem, checkCurveRange } from '@/lib/studies/curve/checkCurveRange';
import { givenOptions, unusable } from './givenOptions';

type PriceArguments =
  | {
      readonly kind: 'usable';
      readonly file: string;
      /** Which job of a copy; null where none is named. */
      readonly jobId: string | null;
      readonly curve: CurveQuestion | null;
      /** Null leaves them as the file has them. */
      readonly breaks: AskedBreaks | null;
    }
  | { readonly kind: 'unusable'; readonly why: string };

const USAGE = 'npm run -s price -- FILE [--job ID] [--curve 1..500 [--at PRICE]] [--breaks auto:6:1]';
/** What a document takes of either. */
const MOST_BREAKS = 12;
const LARGEST_START = 1000;
const OPTIONS = ['--curve', '--at', '--breaks', '--job'];

/** @returns what the price command was asked for, or what is wrong with it in one sentence. */
export function priceArguments(words: readonly string[]): PriceArguments {
  const read = givenOptions(words, OPTIONS, USAGE);
  if (read.kind === 'unusable') return read;
  const { file, given } = read;
  const typed = given.get('--breaks');
  const breaks = typed === undefined ? null : readBreaks(typed);
  if (typed !== undefined && breaks === null)
    return unusable(
      `--breaks ${typed} cannot be read: write auto:6:1 for six breaks from 1 on, or first quantities like 1,6,12, each from 1 to 1000.`,
    );
  const range = given.get('--curve');
  const at = given.get('--at');
  const jobId = given.get('--job') ?? null;
  if (range !== undefined) return withCurve({ file, jobId, breaks }, range, at);
  return at === undefined
    ? { kind: 'usable', file, jobId, curve: null, breaks }
    : unusable(`--at needs a --curve to stand on: ${USAGE}`);
}

function readBreaks(typed: string): AskedBreaks | null {
  const auto = /^auto:(\d{1,4}):(\d{1,4})$/.exec(typed);
  if (auto !== null) {
    const [count, from] = [Number(auto[1]), Number(auto[2])];
    const isUsable = count >= 1 && count <= MOST_BREAKS && from >= 1 && from <= LARGEST_START;
    return isUsable ? { by: 'sums', count, from } : null;
  }
  if (!/^\d{1,4}(,\d{1,4})*$/.test(typed)) return null;
  const starts = typed.split(',').map(Number);
  const isUsable = starts.length <= MOST_BREAKS && starts.every((from) => from >= 1 && from <= LARGEST_START);
  return isUsable ? { by: 'hand', starts } : null;
}

function withCurve(
  asked: Pick<Extract<PriceArguments, { kind: 'usable' }>, 'file' | 'jobId' | 'breaks'>,
  range: string,
  at: string | undefined,
): PriceArguments {
  const ends = /^(-?\d+)\.\.(-?\d+)$/.exec(range);
  if (ends === null)
    return unusable(`--curve ${range} is not a range of batches: write it like 1..500, in whole pieces.`);
  const [from, to] = [Number(ends[1]), Number(ends[2])];
  const problem = checkCurveRange(from, to);
  if (problem !== null) return unusable(`--curve ${range} cannot be drawn: ${sentence(problem)}`);
  if (at === undefined) return { kind: 'usable', ...asked, curve: { from, to, priceEach: null } };
  const priceEach = /^\d+(\.\d+)?$/.test(at) ? Number(at) : Number.NaN;
  if (!(priceEach > 0 && priceEach <= 1e9)) {
    return unusable(
      `--at ${at} is not a price: write an amount above 0 in the workshop’s currency, like 20 or 19.50.`,
    );
  }
  return { kind: 'usable', ...asked, curve: { from, to, priceEach } };
}

function sentence(problem: CurveRangeProblem): string {
  switch (problem.kind) {
    case 'notWhole':
      return `${problem.value} is not a whole number of pieces.`;
    case 'underOne':
      return `the smallest batch is 1 piece, and the range begins at ${problem.from}.`;
    case 'fallsBack':
      return `it ends at ${problem.to}, before it begins at ${problem.from}.`;
    case 'tooLarge':
      return `${problem.to} pieces are more than the ${problem.largest} it goes up to.`;
    default:
      return problem satisfies never;
  }
}
