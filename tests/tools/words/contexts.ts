import type { TextContext } from '@/app/_words/formatter';

/** Two readers who share neither language of numbers, money nor units. */
export const contexts: readonly TextContext[] = [
  {
    locale: 'en-US',
    currency: 'USD',
    units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'floz', distance: 'mi' },
  },
  {
    locale: 'de-DE',
    currency: 'EUR',
    units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
  },
];
