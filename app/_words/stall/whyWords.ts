import { amountWords } from '@/app/_words/amountWords';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import { formatNumber } from '@/shared/formatNumber';

interface Reader {
  readonly locale: string;
  readonly currency: string;
}

/** @returns why more are brought than are expected to sell, told of the goods most are asked for */
export function whyWords(goods: readonly GoodsPlanned[], { locale, currency }: Reader): readonly string[] {
  const [most] = goods.toSorted((one, other) => other.expected - one.expected);
  if (most === undefined) return [];
  const { design, size, netPrice, fees, packaging, costWithOverhead, leftoverShare } = most;
  const missed = netPrice - fees - packaging - costWithOverhead;
  const unsold = costWithOverhead * (1 - leftoverShare);
  const amount = (money: number) => amountWords(money, currency, locale);
  const number = (value: number, maxDecimals: number) => formatNumber(value, locale, { maxDecimals });
  const what = size === '' ? design : `${design} in ${size}`;
  return [
    `${what}: a sale that is missed loses ${amount(missed)}, a piece that stays unsold ${amount(unsold)}.`,
    `So it pays to have enough on ${number(most.criticalRatio * 100, 0)} of 100 days. On a day of the best weather ${number(most.expected, 1)} are asked for on average, but never just that many: ${most.advised} are enough so often.`,
    'Designs that nobody wants after the day, with its date on them for instance, are worth less unsold: tell that with the design, and fewer are advised.',
  ];
}
