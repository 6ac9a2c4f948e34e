import { costOffered } from '@/lib/costing/offeredJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { rulerMarks } from '@/lib/price/rulerMarks';
import { taxTerms } from '@/lib/price/taxTerms';
import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { JobFigures, Lever } from './lever';
import { type LeverAim, levers } from './levers';
import { figuresOf } from './tryChanges';

export interface LeversQuestion {
  /** What is to grow. */
  readonly aim: LeverAim;
}

interface LeversAnswer {
  /** The job as it would go out. */
  readonly before: JobFigures;
  /** The most this crowd pays, where the target lies above it; currency units a piece without tax. */
  readonly ceilingEach: number | null;
  /** Share of tax that written prices have inside: `taxTermsOf` turns target and ceiling into written money. */
  readonly taxInside: number;
  /** Biggest gain first. */
  readonly levers: readonly Lever[];
}

/** More would be read by nobody; the small ones at the end are worth little. */
const MOST = 8;

/** @returns the changes that would raise a job most; null while it cannot be costed. */
export function leversAnswer(input: JobInput, grid: Grid, { aim }: LeversQuestion): LeversAnswer | null {
  const offered = costOffered(input, grid);
  if (offered === null) return null;
  const { costed } = offered;
  const before = figuresOf(costed);
  const ceiling = rulerMarks(costed).find(({ id }) => id === 'ceiling')?.each ?? null;
  return {
    before,
    ceilingEach: ceiling !== null && before.targetEach > ceiling ? ceiling : null,
    taxInside: taxTerms(costed.sheet).inside,
    levers: levers(offered.input, costed, grid, aim)
      .slice(0, MOST)
      .map((lever) => askedToo(lever, input, offered.input)),
  };
}

/** A price is written with its up-charges where nobody had decided it: without them the order would pay less. */
function askedToo(lever: Lever, { job }: JobInput, offered: JobInput): Lever {
  const changes = lever.changes.flatMap((change): readonly Change[] => {
    const [list, index, field] = change.path;
    if (list !== 'lines' || field !== 'askedPrice' || typeof index !== 'number') return [change];
    const upCharges = offered.job.lines[index]?.upCharges ?? [];
    const isDecided = job.lines[index]?.askedPrice !== null;
    return isDecided
      ? [change]
      : [change, { document: 'job', path: ['lines', index, 'upCharges'], value: upCharges }];
  });
  return { ...lever, changes };
}
