'use client';

import { useMemo } from 'react';
import type { PricedJob } from '@/app/_pricing/usePricedJob';
import type { FigureNames } from '@/app/_trace/figureName';

/** The cost sheet of an answer with the documents it was made of; the same object while the answer is. */
export function useFigures(costed: PricedJob | null): FigureNames | null {
  return useMemo(() => {
    const sheet = costed?.answer.costSheet ?? null;
    return sheet === null || costed === null ? null : { sheet, input: costed.input };
  }, [costed]);
}
