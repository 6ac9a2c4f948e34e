import { closesInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { designKey } from '@/lib/stall/designKey';
import { goodsKey } from '@/lib/stall/goodsKey';
import { grouped } from '@/shared/grouped';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { Entry } from '@/shared/schemas/happened';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopStatement } from '@/shared/schemas/stallEvents';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';
import type { ToldOrder } from './orderTax';
import { dayOfClose } from './takingRows';
import { type DaySpan, isWithin } from './yearSpan';

/** What a design was sold for, and what that left. */
export interface DesignResult {
  readonly jobId: string;
  readonly lineId: string;
  /** As the last paper called it; empty where none did. */
  readonly name: string;
  readonly pieces: number;
  /** Without tax, currency units. */
  readonly sold: number;
  /** Less fees and what its making cost; null where the cost of a part of it is not known. */
  readonly left: number | null;
}

export interface DesignsNoted {
  readonly currency: string;
  readonly orders: readonly ToldOrder[];
  readonly closes: readonly DayPaper<'dayClose', DayClose>[];
  readonly plans: readonly DayPaper<'stallPlan', StallPlan>[];
  readonly statements: readonly Entry<'shopStatement', ShopStatement>[];
  /** Share of a shop's price that is tax inside it; null where nobody knows. */
  readonly taxInside: (shopId: string) => number | null;
}

/**
 * Designs by what was agreed, closed and told by shops in a year. An order counts with the day of its yes, with the full
 * cost its quote names, shared among its lines by what they sell for. A day counts by its close: takings, fees and what
 * its goods cost to make. A statement of a shop costs what a plan or close said last of the same goods.
 *
 * @returns those that left most first, those of which nobody knows last
 */
export function designResults(noted: DesignsNoted, span: DaySpan): readonly DesignResult[] {
  const closes = [...closesInForce(noted.closes).values()].filter(
    ({ body }) => body.currency === noted.currency,
  );
  const sales = [
    ...noted.orders.flatMap((order) => orderSales(order, noted, span)),
    ...closes
      .filter(({ body }) => isWithin(span, dayOfClose(body)))
      .flatMap(({ body }) => closeSales(body, noted)),
    ...statementSales(noted, closes, span),
  ];
  return [...grouped(sales, designKey).values()]
    .map(resultOf)
    .toSorted(
      (one, other) =>
        (other.left ?? Number.NEGATIVE_INFINITY) - (one.left ?? Number.NEGATIVE_INFINITY) ||
        (designKey(one) < designKey(other) ? -1 : 1),
    );
}

// Helpers

type Sale = DesignResult;

function resultOf(sales: readonly Sale[]): DesignResult {
  const [first] = sales;
  if (first === undefined) throw new Error('a design nobody sold');
  const sum = (of: (sale: Sale) => number) => sales.reduce((all, sale) => all + of(sale), 0);
  return {
    ...{
      jobId: first.jobId,
      lineId: first.lineId,
      name: sales.findLast(({ name }) => name !== '')?.name ?? '',
    },
    ...{ pieces: sum(({ pieces }) => pieces), sold: sum(({ sold }) => sold) },
    left: sales.some(({ left }) => left === null) ? null : sum(({ left }) => left ?? 0),
  };
}

/** Nothing of what is not made after all. */
function orderSales({ standing }: ToldOrder, { currency }: DesignsNoted, span: DaySpan): readonly Sale[] {
  const { agreed, acceptance, side } = standing;
  if (agreed === null || acceptance === null || !isWithin(span, acceptance.day)) return [];
  if (side.side === 'cancelled' || side.side === 'lost') return [];
  const { body } = agreed.quote;
  if (body.currency !== currency) return [];
  const units = (minor: number) => fromMinor(minor as MinorUnits, currency);
  const alternative = body.alternatives.find(({ id }) => id === agreed.alternativeId);
  const lines = (alternative?.priced.lines ?? body.goods).map(({ jobId, lineId, sizes, start }) => ({
    ...{ jobId, lineId },
    name: body.goods.find((goods) => goods.jobId === jobId && goods.lineId === lineId)?.name ?? '',
    pieces: sizes.reduce((sum, { quantity }) => sum + quantity, 0),
    written: sizes.reduce((sum, { total }) => sum + total, start),
  }));
  const written = lines.reduce((sum, line) => sum + line.written, 0);
  const net = units(agreed.sums.total - agreed.sums.tax);
  // What the quote names is the cost of what was asked; nobody reckoned that of another choice.
  const cost = alternative === undefined ? units(body.owner.fullCost) : null;
  return lines.map(({ written: own, ...line }) => {
    const share = written > 0 ? own / written : 1 / lines.length;
    return { ...line, sold: net * share, left: cost === null ? null : (net - cost) * share };
  });
}

function closeSales(close: DayClose, { plans, currency }: DesignsNoted): readonly Sale[] {
  const units = (minor: number) => fromMinor(minor as MinorUnits, currency);
  const plan = plans.find(({ id }) => id === close.planId)?.body;
  const packaging = new Map(plan?.goods.map((goods) => [goodsKey(goods), goods.packaging]));
  const written = close.goods.reduce((sum, { revenue }) => sum + revenue, 0);
  const { net, fees, commission } = close.money;
  return close.goods
    .filter(({ sold }) => sold !== 0)
    .map((goods) => {
      const share = written > 0 ? goods.revenue / written : 0;
      const each = goods.cost === null ? null : goods.cost + (packaging.get(goodsKey(goods)) ?? 0);
      const kept = units(net - fees - commission) * share;
      return {
        ...{ jobId: goods.jobId, lineId: goods.lineId, name: goods.design, pieces: goods.sold },
        ...{ sold: units(net) * share, left: each === null ? null : kept - each * goods.sold },
      };
    });
}

function statementSales(
  noted: DesignsNoted,
  closes: readonly DayPaper<'dayClose', DayClose>[],
  span: DaySpan,
): readonly Sale[] {
  const costs = new Map<string, number | null>();
  for (const { body } of noted.plans) for (const goods of body.goods) costs.set(goodsKey(goods), goods.cost);
  for (const { body } of closes) for (const goods of body.goods) costs.set(goodsKey(goods), goods.cost);
  const here = noted.statements.filter(
    ({ body }) => body.currency === noted.currency && isWithin(span, body.day),
  );
  return here.flatMap(({ body }) => {
    const gross = body.rows.reduce((sum, { sold, eachMinor }) => sum + sold * eachMinor, 0);
    // The commission is rounded on the sum, so what is due is shared among the rows.
    const kept = gross === 0 ? 0 : Math.min(1, body.dueMinor / gross);
    const tax = noted.taxInside(body.shopId);
    return body.rows.map((row) => saleAtShop(row, { currency: noted.currency, kept, tax, costs }));
  });
}

interface ShopTerms {
  readonly currency: string;
  /** Share of the shop's price that is owed. */
  readonly kept: number;
  readonly tax: number | null;
  readonly costs: ReadonlyMap<string, number | null>;
}

function saleAtShop(
  { goods, sold, eachMinor }: ShopStatement['rows'][number],
  { currency, kept, tax, costs }: ShopTerms,
): Sale {
  const gross = fromMinor((sold * eachMinor) as MinorUnits, currency);
  const inside = gross * (tax ?? 0);
  const cost = costs.get(goodsKey(goods)) ?? null;
  const isKnown = (tax !== null && cost !== null) || sold === 0;
  return {
    ...{ ...designOf(goods), name: '', pieces: sold, sold: gross - inside },
    left: isKnown ? gross * kept - inside - (cost ?? 0) * sold : null,
  };
}

const designOf = ({ jobId, lineId }: StallGoods) => ({ jobId, lineId });
