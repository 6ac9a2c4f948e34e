import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { SetJudged } from '@/lib/stall/prices/judgeSet';
import type { Neighbour } from '@/lib/stall/prices/neighbours';
import type { PriceFloors } from '@/lib/stall/prices/priceFloors';
import type { PriceRow } from '@/lib/stall/prices/priceRows';
import type { AtShop } from '@/lib/stall/shops/toldPrices';

/** How prices and amounts are written: prices without decimals that say nothing, neither with the currency’s name. */
export interface PriceWriter {
  readonly price: (price: number) => string;
  readonly amount: (amount: number) => string;
  readonly number: Formatter['number'];
}

type Row = Pick<PriceRow, 'rangeId' | 'range' | 'sizes' | 'isFrom'> & { readonly price: number };

export const secondsWords = {
  label: 'A second costs, of the price',
  whenEmpty: 'Empty: a second is sold at a price typed then.',
  /** “28 is 14, 16 is 8. On the count, hold a tile.” */
  hint: (
    prices: readonly { readonly first: number; readonly second: number }[],
    { price }: PriceWriter,
  ): string =>
    [
      ...(prices.length === 0
        ? []
        : [`${prices.map(({ first, second }) => `${price(first)} is ${price(second)}`).join(', ')}.`]),
      'On the count, hold a tile.',
    ].join(' '),
} as const;

/** All prices in one line: “Shirts 28, 31 from 2XL; Mugs 16”. */
export function pricesAnswer(rows: readonly Row[], { price }: PriceWriter): string {
  const ranges = [...new Set(rows.map(({ rangeId }) => rangeId))];
  return ranges
    .map((rangeId) => {
      const [first, ...others] = rows.filter((row) => row.rangeId === rangeId);
      if (first === undefined) return '';
      const more = others.map((row) => `${price(row.price)}${sizesWords(row)}`);
      return [`${first.range} ${price(first.price)}`, ...more].join(', ');
    })
    .join('; ');
}

function sizesWords({ sizes, isFrom }: Row): string {
  const [first] = sizes ?? [];
  if (sizes === null || first === undefined) return '';
  return isFrom && sizes.length > 1 ? ` from ${first}` : ` in ${listed(sizes)}`;
}

/** What a row of prices is of: its range, its sizes and, where they do not all cost the same, its designs. */
export const rowName = ({ range, sizes, designs }: PriceRow, isOfAll: boolean): string =>
  [
    range,
    ...(sizes === null ? [] : [sizes.length > 2 ? `${sizes[0]} to ${sizes.at(-1)}` : sizes.join(', ')]),
    ...(isOfAll ? [] : [listed(designs)]),
  ].join(', ');

/** What a price would do to the day if as much were sold. */
export function neighbourWords(
  { margin, more, breakEvenPieces, which }: Neighbour,
  { amount, number }: PriceWriter,
): string {
  const even =
    breakEvenPieces === null
      ? 'no piece earns the day'
      : `break-even at ${number(Math.ceil(breakEvenPieces), 0)} ${Math.ceil(breakEvenPieces) === 1 ? 'piece' : 'pieces'}`;
  const day =
    which === 'now'
      ? ''
      : `, the day ${more < 0 ? 'loses' : 'earns'} ${amount(Math.abs(more))}${more < 0 ? '' : ' more'} if as many buy`;
  return `leaves ${amount(margin)} a piece, ${even}${day}`;
}

/** What pays what, as a sentence. */
export function floorWords({ takeHome, making, withOverhead }: PriceFloors, { amount }: PriceWriter): string {
  const at = (price: number | null) => `at ${price === null ? 'no price' : amount(price)}`;
  const home =
    takeHome === null
      ? 'Whatever the price, take it home.'
      : `For less than ${amount(takeHome)}, take it home.`;
  return `Making and overhead are paid ${at(withOverhead)}, making alone ${at(making)}. ${home}`;
}

/** Why a price gives pause; null where it does not. */
export function priceCaution(
  price: number,
  { takeHome, making, withOverhead }: PriceFloors,
  ceiling: number | null,
  { amount }: PriceWriter,
): string | null {
  if (takeHome === null || price < takeHome)
    return 'Under this a piece is worth more at home than sold. Raise it, or take the piece home.';
  if (making === null || price < making)
    return `It does not pay its making, which takes ${making === null ? 'more than any price' : amount(making)}. Raise it, or make no more of it.`;
  if (withOverhead === null || price < withOverhead)
    return 'It pays its making, and not the overhead on its minutes. Raise it where the market bears it.';
  return ceiling !== null && price > ceiling
    ? `It is more than the ${amount(ceiling)} you think the market bears. Lower it, or change that in the job.`
    : null;
}

/** A shop that asks more for the same; null where none does. */
export const undercutWords = (
  price: number,
  atShop: AtShop | null,
  { price: written }: Pick<PriceWriter, 'price'>,
): string | null =>
  atShop === null || price >= atShop.price
    ? null
    : `${atShop.shop} asks ${written(atShop.price)} for the same, so your stall takes its customers. Ask as much, or agree on it with the shop.`;

/** @returns all that gives pause, one after the other; undefined where nothing does */
export const cautionsTogether = (...cautions: readonly (string | null)[]): string | undefined =>
  cautions.filter((one) => one !== null).join(' ') || undefined;

/** Sizes of one row have different prices in the last hour. */
export const lateRangeWords = (
  [least, most]: readonly [least: number, most: number],
  { price }: Pick<PriceWriter, 'price'>,
): string => `${price(least)} to ${price(most)} by size or design. One typed here holds for all of them.`;

/** What a price of the last hour gives pause for; null where it does not. */
export function lateCaution(
  late: number,
  now: number,
  floors: PriceFloors,
  writer: PriceWriter,
): string | null {
  if (late > now) return 'It is dearer than before the last hour, so who waited pays more. Lower it.';
  return floors.takeHome === null || late < floors.takeHome
    ? `Under ${floors.takeHome === null ? 'any price' : writer.amount(floors.takeHome)} a piece is worth more at home. Raise it, or take it home.`
    : null;
}

/** What a set does, as sentences; what gives pause first. */
export function setWords(judged: SetJudged, { amount, number }: PriceWriter): readonly string[] {
  const cautions = judged.cautions.map((caution) => {
    switch (caution.kind) {
      case 'aboveSingles':
        return `One by one they cost ${amount(judged.singles)}, so nobody would take the set. Lower its price.`;
      case 'aboveCheapest':
        return `Its cheapest pieces cost ${amount(caution.singles)} one by one, so for them the set is dearer. Leave them out, or lower its price.`;
      case 'belowMaking':
        return `It does not pay the making of its pieces, which takes ${caution.floor === null ? 'more than any price' : amount(caution.floor)}. Raise its price.`;
      default:
        return caution satisfies never;
    }
  });
  const bought = Math.round(judged.mayHaveBought * 100);
  return [
    ...cautions,
    `It leaves ${amount(judged.leaves)}; one piece alone ${amount(judged.oneLeaves)}, all one by one ${amount(judged.singlesLeave)}.`,
    ...(judged.saves <= 0
      ? []
      : [
          bought === 0
            ? 'It leaves no more than one piece does, so it never pays.'
            : `It pays while no more than ${number(bought)} of 100 who take it would have bought all of it anyway.`,
        ]),
  ];
}

/** Why a set does not stand on the papers of the last hour. */
export const setLeftOutWords = (name: string, singles: number, { amount }: PriceWriter): string =>
  `In the last hour as many cost ${amount(singles)} one by one, so list and cards leave out “${name}” then. Lower its price to offer it to the end.`;

/** Of a last hour that begins while the stall is not open. */
export const lateTimeWords = {
  open: undefined,
  before: 'The stall opens later than that on its last day, so these prices hold from its opening on.',
  after: 'The stall has closed by then on its last day, so these prices never come. Set an earlier time.',
} as const;

export const priceWords = {
  heading: 'Prices of the day',
  none: 'They come with the plan.',
  ownPrice: 'Empty follows the job.',
  take: 'Take',
  recommended: 'recommended',
  ending: 'Prices end on',
  addSet: 'Add a set',
  setNone: 'Nothing that is brought can be part of it. Choose its goods, or take it out.',
  setUnpriced: 'It has no price yet, so it cannot be sold.',
  addLate: 'Lower prices in the last hour',
  removeLate: 'No last hour',
  lateEmpty: 'Empty stays as it is.',
  offersOrders: 'Offer sizes that are not there to order',
} as const;
