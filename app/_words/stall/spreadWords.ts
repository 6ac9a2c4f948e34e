import { amountWords } from '@/app/_words/amountWords';
import type { StallSpread } from '@/lib/stall/plan/stallPlanned';
import { formatNumber } from '@/shared/formatNumber';

/** @returns how far days with the maker’s numbers differ, in sentences */
export function spreadWords(
  { lossChance, p10, p50, p90, days }: StallSpread,
  pieces: number,
  { locale, currency }: { readonly locale: string; readonly currency: string },
): readonly string[] {
  const amount = (money: number) => amountWords(money, currency, locale);
  const number = (value: number, maxDecimals = 0) => formatNumber(value, locale, { maxDecimals });
  return [
    `With your ${pieces}: one day in ten ends below ${amount(p10)}, half of them above ${amount(p50)}, one in ten above ${amount(p90)}.`,
    `${number(lossChance * 100, 1)} of 100 days end in a loss, after your own pay.`,
    `Drawn from ${number(days)} days: first the weather, then how many ask for each size. The same plan draws the same days.`,
  ];
}
