'use client';

import { useMemo } from 'react';
import type { TextContext } from '@/app/_words/formatter';
import { useMeasures } from './measures';
import { useNumberLocale } from './numberLocale';

/** How the maker reads numbers, for whatever puts figures into words. */
export function useTextContext(): TextContext {
  const locale = useNumberLocale();
  const { units, currency } = useMeasures();
  return useMemo(() => ({ locale, units, currency }), [locale, units, currency]);
}
