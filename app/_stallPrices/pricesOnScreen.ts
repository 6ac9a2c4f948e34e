import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { amountWords } from '@/app/_words/amountWords';
import { priceFigure } from '@/app/_words/stall/priceFigure';
import type { PriceWriter } from '@/app/_words/stall/priceWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { StallAnswer } from '@/lib/stall/plan/stallPlanned';
import { formatNumber } from '@/shared/formatNumber';
import type { StallDay } from '@/shared/schemas/stallDay';
import { cashOf } from '@/shared/tables/coins';

/** What the prices of a stall day's screen are about. */
export interface PricesPart {
  readonly workspace: ReadyWorkspace;
  readonly id: string;
  readonly stallDay: StallDay;
  /** The last plan that could be made; null while there was none. */
  readonly answer: Extract<StallAnswer, { readonly kind: 'planned' }> | null;
}

/** @returns the endings that prices of a stall may have: whole money, and five times that for few coins. */
export function endingsOf({ workspace }: Pick<PricesPart, 'workspace'>): readonly [number, number] {
  const { currency, policy } = workspace.workshop;
  const whole = cashOf(currency)?.priceStep ?? policy.priceStep;
  return [whole, whole * 5];
}

export function priceWriter({ workshop }: Pick<ReadyWorkspace, 'workshop'>): PriceWriter {
  const locale = usableLocale(workshop.locale);
  const amount = (money: number) => amountWords(money, workshop.currency, locale);
  const number = (value: number, maxDecimals = 2) => formatNumber(value, locale, { maxDecimals });
  return {
    amount,
    number,
    price: (price) => priceFigure(price, workshop.currency, locale),
  };
}
