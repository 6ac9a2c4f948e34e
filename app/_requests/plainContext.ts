import type { TextContext } from '@/app/_words/formatter';

/** How figures are written where no workshop says it. */
export const plainContext: TextContext = {
  locale: 'en',
  currency: 'USD',
  units: { length: 'mm', temperature: 'C', pressure: 'kPa', volume: 'mL', distance: 'km' },
};
