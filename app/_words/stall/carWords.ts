import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { LeftInCar } from '@/lib/stall/car/carHeld';
import type { PlanDifferences } from '@/lib/stall/car/planDifferences';
import type { FloatAdvice } from '@/lib/stall/float/adviseFloat';
import type { PlanObstacle } from '@/lib/stall/plan/planBody';

type Money = Pick<Formatter, 'money' | 'number' | 'count'>;

/** What loading the car comes to: bold, then the rest of the line. */
export function carAnswer(
  fixed: { readonly pieces: number; readonly day: string } | null,
  /** Null where nobody can say yet what is needed. */
  float: number | null,
  { money, count, day }: Money & Pick<Formatter, 'day'>,
): { readonly key: string; readonly after: string } {
  const tin =
    float === null ? 'the tin not told yet' : float > 0 ? `${money(float)} in the tin` : 'no change needed';
  return fixed === null
    ? { key: 'Not fixed yet', after: `, ${tin}` }
    : { key: count(fixed.pieces, 'piece'), after: ` fixed on ${day(fixed.day)}, ${tin}` };
}

/** Without a plan nobody has said what is expected, which is not that nothing is. */
export type FloatToSay = FloatAdvice | { readonly kind: 'noPlan' };

/** Where the float comes from, as a sentence; what is missing and how to mend it where nothing can be advised. */
export function floatWords(advice: FloatToSay, { money, number }: Money): string {
  switch (advice.kind) {
    case 'coinsUnknown':
      return 'Notes and coins of your currency are not known here, so no float can be advised. Add what you take.';
    case 'noPlan':
      return 'The plan comes first: what is needed in the tin rests on what will be asked for, and that is not told yet.';
    case 'nothingExpected':
      return 'Nobody is expected in the first 90 minutes, so no float can be advised. Set the hours of the day and what will be asked for.';
    case 'advised':
      return advice.change === 0 || advice.cashTickets === 0
        ? 'Nobody is expected to need change.'
        : `About ${number(advice.firstTickets, 0)} tickets in the first 90 minutes, up to ${number(advice.cashTickets)} of them in cash on nine days of ten: each gets ${money(advice.change)} back on ${money(advice.note)}.`;
    default:
      return advice satisfies never;
  }
}

/** What stands in the way of fixing a plan: what it causes and how to mend it. */
export function planObstacleWords(obstacle: PlanObstacle): string {
  switch (obstacle.kind) {
    case 'nothingBrought':
      return 'Nothing is brought, so there is nothing to count. Set how many come along.';
    case 'setWithoutPrice':
      return `“${obstacle.name}” has no price, so it could not be sold. Type it with the prices, or take it out.`;
    case 'tooManyGoods':
      return `${obstacle.goods} sizes of designs are in it, and a plan holds ${obstacle.most}, so the phone could not count by it. Leave designs at home, or plan two stall days.`;
    case 'trouble':
      return 'The plan itself lacks something, so nothing can be fixed. See what stands beneath its head.';
    default:
      return obstacle satisfies never;
  }
}

/** What the plan of now says otherwise than the fixed one. */
export function planDifferenceWords(
  { bring, prices, pieces, secondsShare, isOtherWeather, isOtherCost, isOtherwise }: PlanDifferences,
  { number }: Money,
): readonly string[] {
  const named = bring.map(({ design, size, before, now }) => {
    const what = size === '' ? design : `${design} ${size}`;
    return `${what} ${number(now)} for ${number(before)}`;
  });
  const priced = prices.map(({ design, size }) => (size === '' ? design : `${design} ${size}`));
  return [
    ...(bring.length > 0
      ? [`${number(pieces.now)} pieces for ${number(pieces.before)}: ${listed(named)}.`]
      : []),
    ...(prices.length > 0 ? [`Other prices: ${listed(priced)}.`] : []),
    ...(secondsShare === null
      ? []
      : [`Seconds: ${shareWords(secondsShare.now, number)} for ${shareWords(secondsShare.before, number)}.`]),
    ...(isOtherWeather
      ? ['Other weathers or chances: taps and the evening go by those that were fixed.']
      : []),
    ...(isOtherCost
      ? ['Other costs of goods, of packing, of leftovers: the evening reckons with those that were fixed.']
      : []),
    ...(isOtherwise
      ? [
          'Days, sets, the last hour, seconds that come along, the float, fees or costs of the day are not what was fixed.',
        ]
      : []),
  ];
}

/** Of these, what lies in the car already, day by day; empty where there is none. */
export function takenWords(taken: readonly LeftInCar[], { number }: Money): readonly string[] {
  const byDay = new Map<string, { readonly title: string; readonly pieces: number }>();
  for (const { stallDayId, title, pieces } of taken)
    byDay.set(stallDayId, { title, pieces: pieces + (byDay.get(stallDayId)?.pieces ?? 0) });
  return [...byDay.values()].map(
    ({ title, pieces }) =>
      `${number(pieces, 0)} of them ${pieces === 1 ? 'lies' : 'lie'} in the car from ${title}, not counted.`,
  );
}

const shareWords = (share: number | null, number: Money['number']): string =>
  share === null ? 'no price' : `${number(share * 100)} % of the price`;

/** What fixing moves from home into the car, and out of it. */
export const loadedWords = (
  { toCar, toHome, unknown }: Readonly<Record<'toCar' | 'toHome' | 'unknown', number>>,
  { count }: Money,
): string =>
  [
    ...(toCar > 0
      ? [`${count(toCar, 'piece')} of the stock ${toCar === 1 ? 'moves' : 'move'} to the car.`]
      : []),
    ...(toHome > 0
      ? [`${count(toHome, 'piece')} of the stock ${toHome === 1 ? 'comes' : 'come'} home from the car.`]
      : []),
    ...(unknown > 0 ? [`Of ${count(unknown, 'piece')} nobody counted a stock, so none is moved.`] : []),
  ].join(' ');

export const carWords = {
  heading: 'Car and tin',
  fix: 'Fix the plan',
  fixAnew: 'Fix it anew',
  fixing: 'Fixing…',
  takeBack: 'Take the plan back',
  noPlan: 'The plan comes first.',
  old: 'A newer plan is being worked out.',
  same: 'The plan is fixed as it stands.',
  counted: 'Sales were counted by it: a plan that was counted by stays.',
  several: 'Plans of two devices are in force for this fair. The newest is counted by; take the other back.',
  differs: 'The plan of now is not the fixed one.',
  nextIsCounted: 'Fixing it anew puts this in its place.',
  carry: 'Take it to the phone',
  bring: 'Bring the count back',
  count: 'Count sales here',
  follow: 'Take the advice',
  addUsual: 'Add the usual things',
  addThing: 'Add a thing',
  secondsOf: (range: string) => `${range}, seconds`,
} as const;

/** A file of something else than this stall day. */
export const otherDayWords = (name: string, here: string): string =>
  `This file is of ${name}, not of ${here}. Bringing it in counts nothing for ${here}.`;
