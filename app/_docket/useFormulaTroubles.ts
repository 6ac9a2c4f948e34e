'use client';

import { useEffect, useState } from 'react';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { type Fetched, useLater } from '../_network/useLater';
import { laterFormulaJudge } from './laterFormulaJudge';

export type FormulaTroubles =
  | { readonly kind: 'notRead' }
  | { readonly kind: 'read'; readonly troubles: readonly Finding[] }
  /** The code that reads formulas could not be fetched. */
  | Extract<Fetched<unknown>, { readonly kind: 'missing' }>;

/**
 * Judges a formula before it is taken in, so that one that cannot be read never costs the job its last result. The
 * engine that reads it is fetched when the first formula is typed.
 *
 * @param row null where there is no formula to judge
 */
export function useFormulaTroubles(
  row: OwnRow | null,
  others: readonly OwnRow[],
  placements: number,
): FormulaTroubles {
  const asked = row === null ? '' : JSON.stringify([row, others, placements]);
  const [told, setTold] = useState<{ readonly asked: string; readonly troubles: FormulaTroubles } | null>(
    null,
  );
  const fetched = useLater(laterFormulaJudge, row !== null);
  const judge = fetched.kind === 'here' ? fetched.value : null;
  useEffect(() => {
    if (row === null || judge === null || told?.asked === asked) return;
    setTold({ asked, troubles: { kind: 'read', troubles: judge(row, others, placements) } });
  }, [asked, told, row, others, placements, judge]);
  if (row === null) return { kind: 'read', troubles: [] };
  if (fetched.kind === 'missing') return fetched;
  return told?.asked === asked ? told.troubles : { kind: 'notRead' };
}
