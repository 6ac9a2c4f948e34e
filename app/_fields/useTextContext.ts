'use client';

import { useContext, useMemo } from 'react';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import { useMeasures } from '@/app/_numbers/measures';
import { useNumberLocale } from '@/app/_numbers/numberLocale';
import type { TextContext } from '@/app/_words/formatter';

/** How the maker reads numbers, for whatever puts figures into words. */
export function useTextContext(): TextContext {
  const locale = useNumberLocale();
  const { units, currency } = useMeasures();
  const { nameOf } = useContext(FormerThingsContext);
  return useMemo(() => ({ locale, units, currency, nameOf }), [locale, units, currency, nameOf]);
}
