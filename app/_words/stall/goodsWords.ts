import type { SizeMix, StallForecast, stallAudiences } from '@/shared/schemas/stallDay';

export const forecastChoices: readonly {
  readonly value: StallForecast['from'];
  readonly label: string;
}[] = [
  { value: 'typed', label: 'Pieces you type' },
  { value: 'visitors', label: 'Visitors who stop and buy' },
  { value: 'pastDays', label: 'Stall days before' },
];

type Audience = (typeof stallAudiences)[number];

/** What the sizes of a range go by: a usual crowd, shares of one’s own, or no sizes at all. */
export type SizeMixChoice = Audience | 'typed' | 'none';

export const sizeMixChoices: readonly { readonly value: SizeMixChoice; readonly label: string }[] = [
  { value: 'none', label: 'They have one size' },
  { value: 'adults', label: 'Adults, mixed' },
  { value: 'women', label: 'Women' },
  { value: 'youth', label: 'Youth' },
  { value: 'trades', label: 'Tradespeople' },
  { value: 'runners', label: 'Runners' },
  { value: 'typed', label: 'Shares of your own' },
];

export const sizeMixChoiceOf = (mix: SizeMix | null): SizeMixChoice =>
  mix === null ? 'none' : mix.from === 'typed' ? 'typed' : mix.audience;
