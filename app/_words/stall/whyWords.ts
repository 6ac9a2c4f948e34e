import { amountWords } from '@/app/_words/amountWords';
import { listed } from '@/app/_words/listed';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import { formatNumber } from '@/shared/formatNumber';

interface Reader {
  readonly locale: string;
  readonly currency: string;
}

type Why = Exclude<GoodsPlanned['advisedBy'], 'rule'>;

const otherReasons: Readonly<Record<Why, string>> = {
  tablePieces:
    'the room on table and rail decides. Fewer are advised than pay, and the pieces least likely to sell stay at home first.',
  cash: 'the cash before the first sale decides. Fewer are advised than pay, and the pieces that bring least for their money stay at home first.',
  atHome:
    'as many come along as are finished already. What they cost is spent, so each may as well be there to be sold.',
  onceCost:
    'what it brings does not pay what preparing and setting it up costs once, so only what is finished already comes along.',
  leastSizes: 'a design comes along with one each of M, L and XL, or stays at home.',
};

/** @returns why as many are advised: what decides besides the rule, then the rule by the goods it decides for most */
export function whyWords(goods: readonly GoodsPlanned[], reader: Reader): readonly string[] {
  const others = (['cash', 'tablePieces', 'onceCost', 'atHome', 'leastSizes'] as const).flatMap((why) => {
    const of = goods.filter(({ advisedBy }) => advisedBy === why);
    // A design is left out with all its sizes.
    const names = new Set(of.map((one) => (why === 'onceCost' ? one.design : nameOf(one))));
    return of.length === 0 ? [] : [`${listed([...names])}: ${otherReasons[why]}`];
  });
  const [most] = goods
    .filter(({ advisedBy }) => advisedBy === 'rule')
    .toSorted((one, other) => other.expected - one.expected);
  return [
    ...others,
    ...(most === undefined ? [] : ruleWords(most, reader)),
    'Designs that nobody wants after the day, with its date on them for instance, are worth less unsold: tell that with the design, and fewer are advised.',
  ];
}

// Helpers

const nameOf = ({ design, size }: GoodsPlanned): string => (size === '' ? design : `${design} in ${size}`);

function ruleWords(goods: GoodsPlanned, { locale, currency }: Reader): readonly string[] {
  const { netPrice, fees, packaging, costWithOverhead, leftoverShare, expected, advised } = goods;
  const missed = netPrice - fees - packaging - costWithOverhead;
  const unsold = costWithOverhead * (1 - leftoverShare);
  const amount = (money: number) => amountWords(money, currency, locale);
  const number = (value: number, maxDecimals: number) => formatNumber(value, locale, { maxDecimals });
  return [
    `${nameOf(goods)}: a sale that is missed loses ${amount(missed)}, a piece that stays unsold ${amount(unsold)}.`,
    `So it pays to have enough on ${number(goods.criticalRatio * 100, 0)} of 100 days, and that takes ${advised}. On a day of the best weather ${number(expected, 1)} are asked for on average: on some more, on some fewer.`,
  ];
}
