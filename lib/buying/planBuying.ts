import type { Grid } from '@/lib/grid/evaluateGrid';
import type { CoverChoice } from '@/lib/job/coversOf';
import { chanceWith, coverOf, coversOf, everySizeWith } from '@/lib/job/coversOf';
import type { Cover } from '@/shared/schemas/making/supply';
import { splitWhole } from '@/shared/splitWhole';
import { boughtApart } from './boughtApart';
import type { BuyingAsked } from './buyingAsked';
import type { BuyingPlan, BuyingRow, CoverOffer, SupplierPart } from './buyingPlan';
import { buyingTroubles } from './buyingTroubles';
import type { FilledBasket } from './fillBasket';
import { inkOfPrinters, neededThings, sizesOfWorks } from './neededThings';
import { type Bought, rowsToBuy } from './rowsToBuy';
import { freeOf } from './stockFor';
import { notSetUp } from './usedByRates';
import { type WorkNeeds, workNeeds } from './workNeeds';

/**
 * What is to be bought for some jobs: needs, stock first, the cheapest suppliers, by when, what is left.
 *
 * @param grid the thread's formula grid
 */
export const planBuying = (asked: BuyingAsked, grid: Grid): BuyingPlan =>
  planOfNeeds(
    asked,
    asked.works.map((work) => workNeeds(work, grid)),
  );

// Helpers

function planOfNeeds(asked: BuyingAsked, needs: readonly (WorkNeeds | null)[]): BuyingPlan {
  const { list, works, currency } = asked;
  const sizes = sizesOfWorks(needs);
  const things = neededThings(needs, asked);
  const bought = rowsToBuy(things, needs, asked);
  const rows = bought.rows.map((row) => withChance(row, sizes));
  const { baskets, dearerAtMostMinor } = bought.choice;
  const goodsMinor = sumOf(baskets.map((basket) => basket.goodsMinor));
  const freightMinor = sumOf(baskets.map((basket) => basket.freightMinor ?? 0));
  const isLogged = works.some(({ upperScrap = [] }) => upperScrap.length > 0);
  return {
    currency,
    works: works.map(({ jobId, name }, at) => ({ jobId, name, isCosted: needs[at] != null })),
    covers: coversOf(sizes).map((choice) =>
      choice.cover === list.cover
        ? offerOf(choice, bought, sizes)
        : offerOf(choice, boughtAt(choice.cover, asked, needs), sizes),
    ),
    atUpperScrap: isLogged ? coverOf(sizesOfWorks(needs, 'lowestChance'), list.cover) : null,
    rows,
    asked: needs.flatMap((one) => one?.asked ?? []),
    ink: inkOfPrinters(needs),
    suppliers: baskets.map((basket) => partOf(basket, bought, asked)),
    cash: {
      ...{ goodsMinor, freightMinor, totalMinor: goodsMinor + freightMinor, dearerAtMostMinor },
      unpriced: rows.filter(({ purchase }) => purchase?.amountMinor === null).length,
    },
    left: { worthMinor: sumOf(rows.map(({ leftWorthMinor }) => leftWorthMinor ?? 0)) },
    notSetUp: notSetUp(needs, works, asked.consumables),
    apart: boughtApart(asked, needs, things),
    troubles: buyingTroubles(asked, needs, rows, bought),
  };
}

type Sizes = Parameters<typeof chanceWith>[0];

function boughtAt(cover: Cover, asked: BuyingAsked, needs: readonly (WorkNeeds | null)[]): Bought {
  const terms = { ...asked, list: { ...asked.list, cover } };
  return rowsToBuy(neededThings(needs, terms), needs, terms);
}

function offerOf(choice: CoverChoice, { rows, choice: { baskets } }: Bought, sizes: Sizes): CoverOffer {
  const there = new Map(
    rows.flatMap((row) => (row.item.kind === 'blank' ? [[sizeKey(row.item), thereOf(row)]] : [])),
  );
  return {
    ...choice,
    toPayMinor: sumOf(baskets.map(({ goodsMinor, freightMinor }) => goodsMinor + (freightMinor ?? 0))),
    unpriced: rows.filter(({ purchase }) => purchase?.amountMinor === null).length,
    isFreightUntold: baskets.some(({ freightMinor }) => freightMinor === null),
    everySizeWithAll: everySizeWith(sizes, (of) => there.get(sizeKey(of)) ?? 0),
  };
}

const sizeKey = ({ blankId, size }: { readonly blankId: string; readonly size: string }): string =>
  JSON.stringify([blankId, size]);

/** What lies free of a thing and what is bought of it. */
const thereOf = ({ stock, purchase }: BuyingRow): number => freeOf(stock) + (purchase?.quantity ?? 0);

function withChance(row: BuyingRow, sizes: Sizes): BuyingRow {
  if (row.item.kind !== 'blank') return row;
  return { ...row, chanceWithAll: chanceWith(sizes, row.item, thereOf(row)) };
}

function partOf(
  { supplierId, things, goodsMinor, freightMinor, freightIsFree, shortMinor, terms }: FilledBasket,
  { rows, places }: Bought,
  { suppliers, works }: BuyingAsked,
): SupplierPart {
  const here = things.flatMap(({ at }) => places[at] ?? []);
  const orderBy = things.flatMap(({ purchase }) => purchase.orderBy ?? []).toSorted();
  return {
    ...{ supplierId, rows: here, goodsMinor, freightMinor, freightIsFree, shortMinor },
    name: suppliers.find(({ id }) => id === supplierId)?.supplier.name ?? '',
    minimumMinor: terms.minimumMinor,
    freightByWorkMinor:
      freightMinor === null
        ? []
        : sharedByWorth(
            freightMinor,
            here.flatMap((at) => rows[at] ?? []),
            works.length,
          ),
    orderBy: orderBy[0] ?? null,
  };
}

/** What is bought for several works is theirs as they are expected to use it. */
function sharedByWorth(freightMinor: number, rows: readonly BuyingRow[], works: number): readonly number[] {
  const worth = Array.from({ length: works }, (_, at) =>
    sumOf(
      rows.map(({ purchase, byWork, expected }) =>
        expected > 0 ? ((purchase?.amountMinor ?? 0) * (byWork[at] ?? 0)) / expected : 0,
      ),
    ),
  );
  const all = sumOf(worth);
  return splitWhole(
    freightMinor,
    worth.map((one) => (all > 0 ? (freightMinor * one) / all : freightMinor / works)),
  );
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
