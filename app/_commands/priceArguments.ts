import type { CurveQuestion } from '@/lib/studies/curve/batchCurve';
import { type CurveRangeProblem, checkCurveRange } from '@/lib/studies/curve/checkCurveRange';

type PriceArguments =
  | { readonly kind: 'usable'; readonly file: string; readonly curve: CurveQuestion | null }
  | { readonly kind: 'unusable'; readonly why: string };

const USAGE = 'npm run -s price -- FILE.json [--curve 1..500 [--at PRICE]]';

/** @returns what the price command was asked for, or what is wrong with it in one sentence. */
export function priceArguments(words: readonly string[]): PriceArguments {
  const files: string[] = [];
  const given = new Map<string, string>();
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] ?? '';
    if (!word.startsWith('--')) {
      files.push(word);
      continue;
    }
    if (word !== '--curve' && word !== '--at') return unusable(`${word} is not known: ${USAGE}`);
    const value = words[index + 1];
    if (value === undefined) return unusable(`${word} needs a value: ${USAGE}`);
    if (given.has(word)) return unusable(`${word} is given twice: ${USAGE}`);
    given.set(word, value);
    index += 1;
  }
  const [file, ...rest] = files;
  if (file === undefined || rest.length > 0) return unusable(`Name one file: ${USAGE}`);
  const range = given.get('--curve');
  const at = given.get('--at');
  if (range === undefined)
    return at === undefined
      ? { kind: 'usable', file, curve: null }
      : unusable(`--at needs a --curve to stand on: ${USAGE}`);
  return withCurve(file, range, at);
}

function withCurve(file: string, range: string, at: string | undefined): PriceArguments {
  const ends = /^(-?\d+)\.\.(-?\d+)$/.exec(range);
  if (ends === null)
    return unusable(`--curve ${range} is not a range of batches: write it like 1..500, in whole pieces.`);
  const [from, to] = [Number(ends[1]), Number(ends[2])];
  const problem = checkCurveRange(from, to);
  if (problem !== null) return unusable(`--curve ${range} cannot be drawn: ${sentence(problem)}`);
  if (at === undefined) return { kind: 'usable', file, curve: { from, to, priceEach: null } };
  const priceEach = /^\d+(\.\d+)?$/.test(at) ? Number(at) : Number.NaN;
  if (!(priceEach > 0 && priceEach <= 1e9)) {
    return unusable(
      `--at ${at} is not a price: write an amount above 0 in the workshop’s currency, like 20 or 19.50.`,
    );
  }
  return { kind: 'usable', file, curve: { from, to, priceEach } };
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

const unusable = (why: string): PriceArguments => ({ kind: 'unusable', why });
