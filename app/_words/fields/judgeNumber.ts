import { parseNumber } from '@/shared/parseNumber';
import type { NumberRefusal } from '@/shared/refuseNumber';

export type NumberRules = Readonly<{
  /** Decimals kept; more are refused. */
  decimals?: number | undefined;
  /** Least and greatest value taken; others are refused, never clamped. */
  min?: number | undefined;
  max?: number | undefined;
  /** The value must be more than this. */
  above?: number | undefined;
  /** True where the document has no place for "nothing". */
  needed?: boolean | undefined;
}>;

export type NumberProblem =
  | NumberRefusal
  | Readonly<{ kind: 'unfinished' }>
  | Readonly<{ kind: 'missing' }>
  | Readonly<{ kind: 'below'; least: number }>
  | Readonly<{ kind: 'notAbove'; floor: number }>
  | Readonly<{ kind: 'above'; greatest: number }>;

export type JudgedNumber =
  | Readonly<{ kind: 'good'; value: number | null }>
  | Readonly<{ kind: 'trouble'; problem: NumberProblem }>;

/** Decides whether a typed text may be committed, and if not, why. */
export function judgeNumber(text: string, locale: string, rules: NumberRules): JudgedNumber {
  const parsed = parseNumber(text, locale, rules.decimals === undefined ? {} : { decimals: rules.decimals });
  if (parsed.kind === 'empty')
    return rules.needed ? problem({ kind: 'missing' }) : { kind: 'good', value: null };
  if (parsed.kind !== 'number') return problem(parsed);
  const { min, max, above } = rules;
  if (above !== undefined && parsed.value <= above) return problem({ kind: 'notAbove', floor: above });
  if (min !== undefined && parsed.value < min) return problem({ kind: 'below', least: min });
  if (max !== undefined && parsed.value > max) return problem({ kind: 'above', greatest: max });
  return { kind: 'good', value: parsed.value };
}

// Helpers

const problem = (found: NumberProblem): JudgedNumber => ({ kind: 'trouble', problem: found });
