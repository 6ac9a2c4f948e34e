import { goodsKey } from '@/lib/stall/goodsKey';
import { dayPriceOf } from '@/lib/stall/plan/costs/dayPriceOf';
import type { SellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import type { GoodsPlanned, StallAnswer } from '@/lib/stall/plan/stallPlanned';
import { type AtShop, dearestOf } from '@/lib/stall/shops/toldPrices';
import { type MinorUnits, toMinor } from '@/shared/money';
import type { SetOffer, StallDay, StallGoods } from '@/shared/schemas/stallDay';
import { commonestPrice, judgeSet, type SetJudged } from './judgeSet';
import { type Neighbours, neighbours } from './neighbours';
import { pieceMoney } from './pieceMoney';
import { type PriceFloors, priceFloors } from './priceFloors';
import { type PriceRow, priceRows } from './priceRows';

type Planned = Extract<StallAnswer, { readonly kind: 'planned' }>;

interface PricesAsked {
  readonly answer: Planned;
  readonly stallDay: Pick<StallDay, 'ranges' | 'prices'>;
  readonly terms: SellingTerms;
  /** Most that the market is thought to bear for a piece; null where nobody said. */
  readonly ceilingOf: (goods: StallGoods) => number | null;
  /** The most that a shop asks for the same; null where none told. */
  readonly atShopOf: (goods: StallGoods) => AtShop | null;
  /** Prices end on whole multiples of this, currency units. */
  readonly step: number;
}

/** A price of the day with what hangs on it. Currency units. */
export interface PriceOfDay {
  readonly row: PriceRow;
  readonly price: number;
  readonly ceiling: number | null;
  /** Of the goods in the row the dearest at a shop; null where no shop told a price of them. */
  readonly atShop: AtShop | null;
  readonly neighbours: Neighbours;
  /** Of the goods in the row the one that needs most. */
  readonly floors: PriceFloors;
  /** From the last hour on; null where it stays, and where goods of the row have different ones. */
  readonly late: number | null;
  /** The least and the most of these; null where all have the same. */
  readonly lateRange: readonly [least: number, most: number] | null;
}

export interface PricesOfDay {
  readonly rows: readonly PriceOfDay[];
  /** What nothing can be part of, or nobody priced, is not judged. */
  readonly sets: readonly {
    readonly set: SetOffer;
    readonly judged: SetJudged | null;
    /** What its pieces cost one by one from the last hour on, where it saves nothing then; null where it does. */
    readonly lateSingles: number | null;
  }[];
}

/** Everything that is said of the prices of a stall day, at the numbers that are brought. */
export function pricesOfDay(asked: PricesAsked): PricesOfDay {
  const { answer, stallDay, terms } = asked;
  const goods = answer.goods.map((one) => ({
    ...one,
    minor: toMinor(one.price, answer.currency),
    takes: one.cost + one.packaging,
    money: one.price > 0 ? pieceMoney(one, terms) : null,
  }));
  const byKey = new Map(goods.map((one) => [goodsKey(one), one] as const));
  const rows = priceRows(stallDay.ranges, goods).map((row) => {
    const own = row.goods.map((named) => byKey.get(goodsKey(named))).filter((one) => one !== undefined);
    return rowOf(asked, row, own);
  });
  return {
    rows: rows.filter((row) => row !== null),
    sets: stallDay.prices.sets.map((set) => ({
      set,
      judged:
        set.price === null
          ? null
          : judgeSet(
              { pieces: set.pieces, price: set.price },
              goods.filter((one) => isIn(set, one)).flatMap(withMoney),
            ),
      lateSingles: lateSinglesOf(
        set,
        goods.filter((one) => isIn(set, one)),
        stallDay.prices.lastHour,
      ),
    })),
  };
}

// Helpers

/** @returns whether goods can be part of a set. */
const isIn = (
  { rangeIds, sizes }: Pick<SetOffer, 'rangeIds' | 'sizes'>,
  { rangeId, size }: Pick<GoodsPlanned, 'rangeId' | 'size'>,
): boolean => rangeIds.includes(rangeId) && (sizes === null || sizes.includes(size));

/** Nobody would buy a set then that costs as much as its pieces do at the price that sells most. */
function lateSinglesOf(
  { pieces, price }: SetOffer,
  goods: readonly Reckoned[],
  lastHour: StallDay['prices']['lastHour'],
): number | null {
  if (lastHour === null || price === null) return null;
  const usual = commonestPrice(
    goods.map((one) => ({ price: dayPriceOf(lastHour.prices, one) ?? one.price, sold: one.sold })),
  );
  return usual !== null && price >= pieces * usual ? pieces * usual : null;
}

interface Reckoned extends GoodsPlanned {
  readonly minor: MinorUnits;
  readonly sold: number;
  readonly takes: number;
  /** Null where it is given away. */
  readonly money: ReturnType<typeof pieceMoney> | null;
}

const withMoney = ({ money, ...one }: Reckoned) =>
  money === null ? [] : [{ ...one, money, keptOf: money.keptOf }];

function rowOf(
  { answer, stallDay, ceilingOf, atShopOf, step }: PricesAsked,
  row: PriceRow,
  goods: readonly Reckoned[],
): PriceOfDay | null {
  const [first] = goods;
  const known = goods.flatMap(withMoney);
  if (first === undefined || known.length === 0) return null;
  const { weighted, breakEven } = answer.mine;
  const ceilings = goods.map(ceilingOf).filter((ceiling) => ceiling !== null);
  const ceiling = ceilings.length === 0 ? null : Math.min(...ceilings);
  const late = stallDay.prices.lastHour?.prices ?? [];
  const lates = goods.map((one) => dayPriceOf(late, one));
  const isOneLate = lates.every((price) => price === lates[0]);
  // What stays is sold at its price.
  const asked = goods.map((one, at) => lates[at] ?? one.price);
  const at = { price: first.price, ceiling, goods: known };
  return {
    row,
    price: first.price,
    ceiling,
    atShop: dearestOf(goods.map(atShopOf).filter((one) => one !== null)),
    neighbours: neighbours(
      at,
      {
        sold: weighted.sold,
        contributionPerPiece: breakEven?.contributionPerPiece ?? 0,
        fixed: weighted.fixed,
      },
      step,
    ),
    floors: highest(known.map((one) => priceFloors(one, one.money))),
    late: isOneLate ? (lates[0] ?? null) : null,
    lateRange: isOneLate ? null : [Math.min(...asked), Math.max(...asked)],
  };
}

function highest(floors: readonly PriceFloors[]): PriceFloors {
  const of = (name: keyof PriceFloors) => {
    const all = floors.map((one) => one[name]).filter((price) => price !== null);
    return all.length < floors.length ? null : Math.max(...all);
  };
  return { takeHome: of('takeHome'), making: of('making'), withOverhead: of('withOverhead') };
}
