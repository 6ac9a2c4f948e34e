'use client';

import { useEffect, useState } from 'react';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';

export type FormulaProblems =
  | { readonly kind: 'notRead' }
  | { readonly kind: 'read'; readonly problems: readonly Finding[] }
  /** The code that reads formulas could not be fetched. */
  | { readonly kind: 'noReader' };

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
  useEffect(() => {
    if (row === null || told?.asked === asked) return;
    let isWanted = true;
    const tell = (problems: FormulaProblems) => isWanted && setTold({ asked, problems });
    import('./judgeOwnFormula').then(
      ({ judgeOwnFormula }) => tell({ kind: 'read', problems: judgeOwnFormula(row, others, placements) }),
      () => tell({ kind: 'noReader' }),
    );
    return () => {
      isWanted = false;
    };
  }, [asked, told, row, others, placements]);
  if (row === null) return { kind: 'read', problems: [] };
  return told?.asked === asked ? told.problems : { kind: 'notRead' };
}
