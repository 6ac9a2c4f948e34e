import { roundDecimal } from '@/shared/decimal';
import { parseNumber } from '@/shared/parseNumber';
import type { NumberRefusal } from '@/shared/refuseNumber';
import type { UnitEdge } from './unitEdge';

export interface NumberRules {
  /** Decimals kept; more are refused. */
  readonly decimals?: number | undefined;
  /** Least and greatest value taken, in the unit the document keeps; others are refused, never clamped. */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** The value must be more than this. */
  readonly above?: number | undefined;
  /** The way from what is typed to what is kept, where that is another unit. */
  readonly edge?: UnitEdge | undefined;
  /** True where the document has no place for "nothing". */
  readonly needed?: boolean | undefined;
}

export type NumberProblem =
  | NumberRefusal
  | Readonly<{ kind: 'unfinished' }>
  | Readonly<{ kind: 'missing' }>
  | Readonly<{ kind: 'below'; least: number }>
  | Readonly<{ kind: 'notAbove'; floor: number }>
  | Readonly<{ kind: 'above'; greatest: number }>;

type JudgedNumber =
  | Readonly<{ kind: 'good'; value: number | null }>
  | Readonly<{ kind: 'problem'; problem: NumberProblem }>;

/** Decides whether a typed text may be committed, and if not, why. */
export function judgeNumber(text: string, locale: string, rules: NumberRules): JudgedNumber {
  const parsed = parseNumber(text, locale, rules.decimals === undefined ? {} : { decimals: rules.decimals });
  if (parsed.kind === 'empty')
    return rules.needed ? problem({ kind: 'missing' }) : { kind: 'good', value: null };
  if (parsed.kind !== 'number') return problem(parsed);
  const { min, max, above, edge } = rules;
  const kept = edge === undefined ? parsed.value : edge.kept(parsed.value);
  if (above !== undefined && kept <= above)
    return problem({ kind: 'notAbove', floor: typedLimit(above, edge, 'ceiling') });
  if (min !== undefined && kept < min)
    return problem({ kind: 'below', least: typedLimit(min, edge, 'ceiling') });
  if (max !== undefined && kept > max)
    return problem({ kind: 'above', greatest: typedLimit(max, edge, 'floor') });
  return { kind: 'good', value: parsed.value };
}

// Helpers

/** As fine as anybody types a measure. */
const TOLD_DECIMALS = 4;

/** A limit in the unit that is typed, rounded inward: what the sentence names is taken when it is typed. */
const typedLimit = (limit: number, edge: UnitEdge | undefined, inward: 'floor' | 'ceiling') =>
  edge === undefined ? limit : roundDecimal(edge.shown(limit), TOLD_DECIMALS, inward);

const problem = (found: NumberProblem): JudgedNumber => ({ kind: 'problem', problem: found });
