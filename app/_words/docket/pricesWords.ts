import { amountWords } from '@/app/_words/amountWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { AskedAgainstList, RuleAtWork } from '@/lib/price/list/askedAgainstList';
import { type LadderStep, ladderOf } from '@/lib/price/list/ladder';
import type { LineList, ListedSize } from '@/lib/price/list/lineList';
import type { OfferedSizes } from '@/lib/price/offer';
import type { StairFall } from '@/lib/studies/breaks/staircase';
import { formatMinor, type MinorUnits } from '@/shared/money';
import type { Channel } from '@/shared/schemas/workshop';
import type { AnswerWords } from './answerWords';
import { namesInWords } from './jobWords';
import type { PieceWord } from './pieceWords';
import { sizesWords } from './sizesWords';

/** How prices of a list are written: money without its name. */
export interface PriceVoice {
  readonly context: TextContext;
  readonly currency: string;
  readonly piece: PieceWord;
}

/** An amount of a list without the currency's name. */
export const listMoney = (minor: MinorUnits, { currency, context }: PriceVoice): string =>
  formatMinor(minor, currency, context.locale);

/** What a list says in one line. */
export function pricesAnswer(
  list: LineList,
  falls: readonly StairFall[],
  offered: readonly Pick<OfferedSizes, 'sizes' | 'price'>[],
  voice: PriceVoice,
): AnswerWords {
  const { piece } = voice;
  const money = (minor: MinorUnits) => listMoney(minor, voice);
  if (falls.length > 0)
    return {
      key: `${counted(falls.length)}:`,
      after: ` at ${namesInWords(falls.map(({ cheaperAt }) => `${cheaperAt}`))} a larger order costs less`,
    };
  const steps = ladderOf(list);
  const priced = steps.filter(({ kind }) => kind === 'each');
  const [first] = priced;
  const last = priced.at(-1);
  if (first === undefined || last === undefined) return { key: 'No price yet' };
  if (list.rule === 'onePrice') {
    // One price is what the job asks: a list beside it that nobody sells by would be a second truth.
    const base = offered[0]?.price ?? first.amount;
    const dearer = offered.find(({ price }) => price > base);
    return {
      key: `${money(base)} a ${piece.one}`,
      after:
        dearer === undefined ? ', however many' : `, ${money(dearer.price)} from ${dearer.sizes[0] ?? ''}`,
    };
  }
  if (list.rule === 'setUpApart')
    return {
      key: `${money(list.start)} to start and ${money(last.amount)} a ${piece.one}`,
      after: '; no order pays more than a larger one',
    };
  const key =
    first === last
      ? `${money(first.amount)} a ${piece.one}`
      : `${money(first.amount)} down to ${money(last.amount)}`;
  return {
    before: first === last ? '' : 'From ',
    key,
    after: list.rule === 'asListed' ? '; no total falls' : '; no order pays more than a larger one',
  };
}

/** For how many a price of a ladder holds. */
export function stepWords({ kind, from, to, breakTo }: LadderStep, rule: LineList['rule']): string {
  if (kind === 'start') return 'to start';
  if (rule === 'setUpApart') return 'and each';
  if (kind === 'together') return from === 1 ? `up to ${to}, in all` : `${from} to ${to}, in all`;
  if (rule === 'onePrice') return 'each';
  if (rule === 'capped') return `from ${from}`;
  return breakTo === null ? `from ${from}` : from === breakTo ? `${from}` : `${from} to ${breakTo}`;
}

/** What the ladder's prices are for: the piece, the sizes without a charge, and tax. */
export function ladderWords(
  sizes: readonly ListedSize[],
  taxMode: Channel['taxMode'],
  { piece }: PriceVoice,
): string {
  const base = sizes.filter(({ more }) => more === 0).map(({ size }) => size);
  const of = sizes.length > 1 && base.length > 0 ? `, ${sizesWords(base)}` : '';
  return `a ${piece.one}${of}, ${ladderTaxWords(taxMode)}`;
}

/** How the prices stand to tax, in three words. */
export const ladderTaxWords = (taxMode: Channel['taxMode']): string => taxSaid[taxMode ?? 'open'];

/**
 * What this job asks beside its list.
 *
 * @param isOneOfSeveral whether the job has other lines, which share its set-up: the list is for this one alone
 */
export function askedWords(asked: AskedAgainstList, isOneOfSeveral: boolean, voice: PriceVoice): string {
  const money = (minor: MinorUnits) => listMoney(minor, voice);
  const { piece } = voice;
  const formatter = formatterFor(voice.context);
  if (asked.held !== null) {
    const { as } = asked.held;
    const { byList, ofJob, areAdded } = asked.sums;
    const own =
      asked.asked === null
        ? ` Suggested: ${money(asked.listEach)} each, ${money(ofJob)} in all.`
        : ` This job asks ${money(asked.asked)} each, ${money(ofJob)} in all${sizesAgainst(asked, money)}.`;
    const why = [`as ${as} do`, ...(areAdded ? ['what sizes add included'] : [])];
    return `By the list ${formatter.count(asked.n, piece.one, piece.many)} ${asked.n === 1 ? 'pays' : 'pay'} ${money(byList)} in all, ${why.join(', ')}.${own}`;
  }
  if (asked.start !== null) return apartWords(asked, asked.start, isOneOfSeveral, voice);
  if (asked.asked === null)
    return `By the list a ${piece.one} of this job is ${money(asked.listEach)}${isOneOfSeveral ? '; its lines share one set-up, so it can be less' : ''}.`;
  const over = moreOrLess(asked.over, money);
  const sizes = sizesAgainst(asked, money);
  if (asked.over === 0 && sizes === '') return `This job asks ${money(asked.asked)}, as the list does.`;
  return `This job asks ${money(asked.asked)}, ${asked.over === 0 ? 'as the list does' : `${over} the list`}${sizes}${isOneOfSeveral && asked.over < 0 ? ': its lines share one set-up' : ''}.`;
}

/** What the prices of a list take for granted. */
export function listAssumesWords(
  rule: LineList['rule'],
  isOneOfSeveral: boolean,
  target: number,
  formatter: Formatter,
): string {
  const isAlone = isOneOfSeveral && rule !== 'onePrice';
  const batch = isAlone ? 'an order of that many of this line alone' : 'a batch of that many of this line';
  const others = isOneOfSeveral && !isAlone ? 'other lines, rates' : 'rates';
  return `Each price is for one piece in ${batch}, in this job’s mix of sizes; ${others} and the drive stay as they are. The target is ${formatter.share(target)} after your own pay.`;
}

/** One order that the rule holds down. */
export function ruleWords({ n, as, pays, instead }: RuleAtWork, voice: PriceVoice): string {
  const { currency, context, piece } = voice;
  const money = (value: number) => amountWords(value, currency, context.locale);
  return `The rule at work: ${formatterFor(context).count(n, piece.one, piece.many)} ${n === 1 ? 'pays' : 'pay'} ${money(pays)}, as ${as} do, not ${money(instead)}.`;
}

/** What the list leaves at the least, and what an order pays over its own sum at the most. */
export function leastWords(list: LineList, target: number, formatter: Formatter): string {
  const least = Math.floor(list.leastMargin * 100 + 1e-9);
  const over =
    list.largestOvercharge === null || !(list.largestOvercharge > 0)
      ? ''
      : ` None pays over ${formatter.number(Math.ceil(list.largestOvercharge * 100 - 1e-9), 0)} % more than its own sum.`;
  return list.leastMargin >= target - 1e-9
    ? `Every order leaves ${formatter.number(least, 0)} % or more after your pay.${over}`
    : `Some orders leave only ${formatter.number(least, 0)} %: less than the ${formatter.share(target)} you aim for.${over}`;
}

// Helpers

/** The start and the price of a piece beside those of a list with set-up apart. */
function apartWords(
  { asked, listEach, over, sizes }: AskedAgainstList,
  start: NonNullable<AskedAgainstList['start']>,
  isOneOfSeveral: boolean,
  voice: PriceVoice,
): string {
  const money = (minor: MinorUnits) => listMoney(minor, voice);
  const pair = (once: MinorUnits, each: MinorUnits) =>
    `${money(once)} to start and ${money(each)} a ${voice.piece.one}`;
  const listed = pair(start.listed, listEach);
  if (asked === null)
    return `By the list this job is ${listed}${isOneOfSeveral ? '; its lines share one set-up, so it can be less' : ''}.`;
  const asks =
    start.asked === 0 ? `${money(asked)} a ${voice.piece.one}, nothing to start` : pair(start.asked, asked);
  const told = sizesAgainst({ sizes }, money);
  return over === 0 && start.asked === start.listed
    ? `This job asks ${asks}, as the list does${told}.`
    : `This job asks ${asks}; the list ${listed}${told}.`;
}

const taxSaid = {
  added: 'tax added later',
  inside: 'tax inside',
  none: 'no tax',
  open: 'tax not yet decided',
} as const;

const numbers = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six'] as const;

const counted = (count: number): string => `${numbers[count] ?? count} ${count === 1 ? 'fall' : 'falls'}`;

const moreOrLess = (over: MinorUnits, money: (minor: MinorUnits) => string): string =>
  `${money(Math.abs(over) as MinorUnits)} ${over > 0 ? 'over' : 'under'}`;

function sizesAgainst(
  { sizes }: Pick<AskedAgainstList, 'sizes'>,
  money: (minor: MinorUnits) => string,
): string {
  if (sizes.length === 0) return '';
  const charge = (minor: MinorUnits) => `${minor < 0 ? '' : '+'}${money(minor)}`;
  const told = sizes.map(({ size, own, listed }) => `${size} ${charge(own)} against ${charge(listed)}`);
  return `; ${namesInWords(told)}`;
}
