import { amountWords } from '@/app/_words/amountWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { fewerOfRange, sayFewer } from '@/lib/stall/plan/advice/sayFewer';
import type { BringRange } from '@/lib/stall/plan/bringGrid';
import type { StallPlanned } from '@/lib/stall/plan/stallPlanned';
import { formatNumber } from '@/shared/formatNumber';
import type { StallDay } from '@/shared/schemas/stallDay';
import { dayOfWeather, unlessSure, weatherLabel, weatherTold, whenWeather } from './weatherWords';

/** How the maker reads amounts. */
interface Reader {
  readonly locale: string;
  readonly currency: string;
}

type DaysOf = Pick<StallDay, 'days' | 'weathers'>;

/** An answer line, its key figure set apart. */
interface StallAnswerLine {
  readonly key: string;
  readonly after?: string;
}

type RangeFewer = ReturnType<typeof fewerOfRange>;
type Fewer = ReturnType<typeof sayFewer>;

/** @returns “shirts” of “Shirts”; a name that is an abbreviation stays */
export const inSentence = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? `${name.slice(0, 1).toLowerCase()}${name.slice(1)}` : name;

/** @returns how many are advised beside how many the maker brings: “81 shirts for your 96, 28 mugs for your 36” */
export function bringAnswer(
  ranges: readonly BringRange[],
  fewer: RangeFewer,
  ofDays: DaysOf,
): StallAnswerLine {
  const differing = ranges.filter(({ rows }) =>
    rows.some(({ cells }) => cells.some(({ held, advised }) => held !== null && held !== advised)),
  );
  if (differing.length === 0) {
    const all = ranges.map(({ name, mine }) => `${mine} ${inSentence(name)}`).join(', ');
    return { key: all, after: ranges.length === 0 ? '' : ', as advised' };
  }
  const told = differing.find(({ rangeId }) => rangeId === fewer?.rangeId);
  const others = differing
    .filter((range) => range !== told)
    .map(({ name, mine, advised }) => `${advised} ${inSentence(name)} for your ${mine}`);
  if (told === undefined || fewer === null) return { key: others.join(', '), after: ' advised' };
  const { best } = fewer;
  const profit =
    best.profit === 'same'
      ? `same profit ${whenWeather(weatherLabel(best, ofDays))}`
      : `more profit even ${whenWeather(weatherLabel(best, ofDays))}`;
  return {
    key: `${withCapital(spelledNumber(fewer.fewer))} fewer ${inSentence(told.name)}, ${profit}:`,
    after: ` ${[`${told.advised} for your ${told.mine}`, ...others].join(', ')}`,
  };
}

/** @returns how many days end in a loss, to a tenth of a hundredth, so that two plans can be told apart: “16.0 %” */
export const lossShareWords = (lossChance: number, locale: string): string =>
  `${formatNumber(lossChance * 100, locale, { minDecimals: 1, maxDecimals: 1 })} %`;

/** @returns what the weather does to the plan, in one line */
export function weatherAnswer(
  mine: StallPlanned,
  fewer: Fewer,
  ofDays: DaysOf,
  { locale, currency }: Reader,
): StallAnswerLine {
  const when = (one: Parameters<typeof weatherLabel>[0]) => whenWeather(weatherLabel(one, ofDays));
  if (fewer !== null)
    return {
      key: `${withCapital(spelledNumber(fewer.fewer))} fewer lose less ${when(fewer.worst)}`,
      after: ` and give up nothing ${when(fewer.best)}`,
    };
  const byProfit = mine.outcomes
    .filter(({ chance }) => chance > 0)
    .toSorted((one, other) => one.profit - other.profit);
  const [worst, best] = [byProfit[0], byProfit.at(-1)];
  if (worst === undefined || best === undefined) return { key: 'No weather is told' };
  const amount = (money: number) => amountWords(money, currency, locale);
  if (worst === best) return { key: amount(best.profit), after: ` ${weatherLabel(best, ofDays)}` };
  return {
    key: `${amount(best.profit)} ${when(best)}`,
    after: `, ${amount(worst.profit)} ${when(worst)}`,
  };
}

/** @returns that only some weathers are drawn: “the 8 likeliest of 21 weathers” */
export const likeliestWords = (shown: number, all: number): string =>
  `the ${shown} likeliest of ${all} weathers`;

/** @returns whether to go, in few words */
export function verdictWords({ verdict, worst }: StallPlanned['goOrStay'], ofDays: DaysOf): string {
  switch (verdict) {
    case 'go':
      return 'Go, whatever the weather';
    case 'goUnless':
      return `Go, ${unlessSure(weatherLabel(worst, ofDays))}`;
    case 'stay':
      return 'Stay at home';
    default:
      return verdict satisfies never;
  }
}

/** @returns the answer line of going or staying: “Go, whatever the weather: a wet day still leaves 172.26 more than staying” */
export function stayAnswer(
  goOrStay: StallPlanned['goOrStay'],
  ofDays: DaysOf,
  { locale, currency }: Reader,
): StallAnswerLine {
  const { worst, avoidable } = goOrStay;
  const more = worst.earns - avoidable;
  const amount = amountWords(Math.abs(more), currency, locale);
  const day = dayOfWeather(weatherTold(worst, ofDays));
  return {
    key: `${verdictWords(goOrStay, ofDays)}:`,
    after:
      more >= 0
        ? ` ${day} still leaves ${amount} more than staying`
        : ` ${day} leaves ${amount} less than staying`,
  };
}

/** @returns what is paid either way, and from where on staying pays */
export function stayBoundWords(
  { sunk, stayHomeBelow, worst }: StallPlanned['goOrStay'],
  worstFactor: number | null,
  ofDays: DaysOf,
  { locale, currency }: Reader,
): string {
  const paid = `${amountWords(sunk, currency, locale)} is paid either way.`;
  if (stayHomeBelow === null) return `${paid} Staying pays in any weather.`;
  if (stayHomeBelow === 0) return `${paid} Going pays in any weather.`;
  const of100 = (share: number) => `${formatNumber(share * 100, locale, { maxDecimals: 0 })} of 100`;
  const bound = `Staying pays only when fewer than ${of100(stayHomeBelow)} buyers of the best day come`;
  return worstFactor === null
    ? `${paid} ${bound}.`
    : `${paid} ${bound}; ${dayOfWeather(weatherTold(worst, ofDays))} brings ${of100(worstFactor)}.`;
}

/** What a break-even covers, in the order in which they are passed. */
export const breakEvenNames = {
  cash: 'cash back',
  withPay: 'your pay',
  everything: 'everything',
  withWriteDown: 'unsold too',
} as const;

/** In the place of a sum of which a part is not told. */
export const notKnownYet = 'not known yet';
