import { dayOf } from '@/app/_clock/dayOf';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { paymentsOf } from '@/lib/orders/money/payments';
import { isOfOrders } from '@/lib/orders/orderFacts';
import { stockValue } from '@/lib/stock/stockValue';
import { stockWorth } from '@/lib/stock/stockWorth';
import { inOrder } from '@/lib/stored/entriesInForce';
import { boughtAlone } from '@/lib/year/boughtAlone';
import { stockAtStart } from '@/lib/year/stockAtStart';
import { type DatedStock, stockByDay } from '@/lib/year/stockByDay';
import { type DaySpan, type YearSpan, yearOfDay } from '@/lib/year/yearSpan';
import { type YearNoted, type YearStanding, yearSteps } from '@/lib/year/yearStanding';

/** A year, and all that something is noted of. */
interface Reckoned {
  readonly standing: YearStanding;
  readonly years: readonly number[];
}

/** Folds what was noted, with stops between: of many entries each takes a part of what a page may be still for. */
export function* reckonYear(
  told: Told,
  book: OrderBook,
  span: YearSpan,
  firstMonth: number,
): Generator<undefined, Reckoned, undefined> {
  const stock = yield* stockIn(told, span);
  const noted = notedOf(told, book, stock);
  yield;
  const months = new Set(daysOf(noted).map((day) => day.slice(0, 'YYYY-MM'.length)));
  const years = [...months, book.today].map((day) => yearOfDay(day, firstMonth));
  yield;
  return { standing: yield* yearSteps(noted, span, book.today), years };
}

// Helpers

type Told = Pick<
  ReadyWorkspace,
  'entries' | 'papers' | 'happened' | 'workshop' | 'kinds' | 'shops' | 'stallDays' | 'runs'
>;

function notedOf(
  { entries, papers, happened, workshop, kinds, shops, stallDays, runs }: Told,
  book: OrderBook,
  stock: YearNoted['stock'],
): YearNoted {
  const channelKept = (id: string | null | undefined) =>
    id != null && workshop.channels.some((channel) => channel.id === id) ? id : null;
  const { overheadPerYear, overheadHours } = workshop.rates;
  return {
    currency: workshop.currency,
    payments: paymentsOf(happened.filter(isOfOrders)),
    orderOf: book.of,
    orders: book.board,
    closes: papers.dayClose,
    plans: papers.stallPlan,
    shopPayments: entries.shopPayment,
    statements: entries.shopStatement,
    channelOf: ({ kind, id }) => {
      if (kind === 'shop') return channelKept(shops[id]?.channelId);
      if (kind === 'stallDay') return channelKept(stallDays[id]?.channelId);
      const order = kinds.order.bodies[id];
      const first = order?.jobIds.map((jobId) => book.jobOf(jobId)).find((kept) => kept !== null);
      return channelKept(order?.channelId ?? first?.job.channelId);
    },
    expenses: entries.expense,
    goodsIn: entries.goodsIn,
    claims: entries.faultClaim,
    hours: entries.hours,
    runSteps: entries.runStep,
    standards: papers.runStandard,
    runs,
    presses: workshop.presses,
    printers: workshop.printers,
    pressings: entries.pressing,
    sheetsPrinted: entries.sheetsPrinted,
    jobOf: (jobId) => book.jobOf(jobId)?.job ?? null,
    dayOf: dayAt,
    taxInside: (shopId) => {
      const channel = workshop.channels.find(({ id }) => id === shops[shopId]?.channelId);
      if (channel === undefined || channel.taxMode === null) return null;
      const share = channel.tax?.value ?? null;
      if (channel.taxMode !== 'inside') return 0;
      return share === null ? null : share / (1 + share);
    },
    overheadPerHour:
      overheadPerYear === null || overheadHours === null || overheadHours.value <= 0
        ? null
        : overheadPerYear.value / overheadHours.value,
    wearInOverhead: workshop.policy.wearInOverhead,
    stock,
  };
}

/** What lay in stock when the year began and when it ended, or lies there now; null where nothing was ever noted of it. */
function* stockIn(
  { entries, papers, workshop }: Told,
  { from, to }: DaySpan,
): Generator<undefined, YearNoted['stock'], undefined> {
  const { stockMove, stockTransfer, stockCount, goodsIn, runStep } = entries;
  const inForce = inOrder([...stockMove, ...stockTransfer, ...stockCount]);
  if (inForce.length === 0) return null;
  yield;
  const told = { goodsIn, runSteps: runStep, closes: papers.dayClose, dayOf: dayAt };
  const noted = stockByDay(inForce, told);
  const worth = (some: readonly DatedStock[]) =>
    stockWorth(stockValue(some.map(({ entry }) => entry)), workshop.currency);
  yield;
  const atStart = worth(stockAtStart(noted, from));
  yield;
  const atEnd = worth(noted.filter(({ day }) => day <= to));
  yield;
  return { atStart, atEnd, aloneMinor: boughtAlone(noted, { from, to }, workshop.currency) };
}

const dayAt = (at: number): string => dayOf(new Date(at));

const daysOf = (noted: YearNoted): readonly string[] => [
  ...noted.payments.map(({ entry }) => entry.body.day),
  ...[...noted.expenses, ...noted.goodsIn, ...noted.hours, ...noted.shopPayments].map(({ body }) => body.day),
  ...noted.closes.flatMap(({ body }) => body.days),
];
