'use client';

import { useEffect, useState } from 'react';
import { type Fetched, useLazy } from '@/app/_network/useLazy';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { lazyFormulaJudge } from './lazyFormulaJudge';

type FormulaProblems =
  | { readonly kind: 'notRead' }
  | { readonly kind: 'read'; readonly problems: readonly Finding[] }
  /** The code that reads formulas could not be fetched. */
  | Extract<Fetched<unknown>, { readonly kind: 'missing' }>;

/**
 * Judges a formula before it is taken in, so that one that cannot be read never costs the job its last result. The
 * engine that reads it is fetched when the first formula is typed.
 *
 * @param row null where there is no formula to judge
 */
export function useFormulaProblems(
  row: OwnRow | null,
  others: readonly OwnRow[],
  placements: number,
): FormulaProblems {
  const asked = row === null ? '' : JSON.stringify([row, others, placements]);
  const [told, setTold] = useState<{ readonly asked: string; readonly problems: FormulaProblems } | null>(
    null,
  );
  const fetched = useLazy(lazyFormulaJudge, row !== null);
  const judge = fetched.kind === 'here' ? fetched.value : null;
  useEffect(() => {
    if (row === null || judge === null || told?.asked === asked) return;
    setTold({ asked, problems: { kind: 'read', problems: judge(row, others, placements) } });
  }, [asked, told, row, others, placements, judge]);
  if (row === null) return { kind: 'read', problems: [] };
  if (fetched.kind === 'missing') return fetched;
  return told?.asked === asked ? told.problems : { kind: 'notRead' };
}
