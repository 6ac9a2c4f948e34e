import type { StockWorth } from '@/lib/stock/stockWorth';
import { compareText } from '@/shared/compareText';
import { grouped } from '@/shared/grouped';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { Expense } from '@/shared/schemas/orderEvents';
import { type DesignResult, type DesignsNoted, designResults } from './designResults';
import { type DoubtfulPair, doubtfulPairs, expenseRows, type SpendingNoted } from './expenseRows';
import { type FairResult, fairResults } from './fairResults';
import { type HourRow, type HoursNoted, hourRows, longDays, sumOfHours } from './hourRows';
import { machineWear, type WearNoted } from './machineWear';
import { type OverheadHeld, overheadByQuarter, overheadHeld } from './overheadHeld';
import { type TakingsNoted, takingRows } from './takingRows';
import { sumOfRows, type YearRow } from './yearRow';
import { type DaySpan, isWithin, type YearSpan } from './yearSpan';
import { moneyOf, monthsOf, othersOf, type SpanMoney, taxOf } from './yearSums';

/** Everything a year is told by, of all years. Entries in force, in the one order of all devices. */
export interface YearNoted extends TakingsNoted, SpendingNoted, HoursNoted, WearNoted {
  readonly orders: readonly DesignsNoted['orders'][number][];
  readonly plans: DesignsNoted['plans'];
  readonly statements: DesignsNoted['statements'];
  readonly taxInside: DesignsNoted['taxInside'];
  /** Overhead of an hour, currency units; null where it is not known. */
  readonly overheadPerHour: number | null;
  /** The yearly overhead pays for worn machines, so that their wear is held against it. */
  readonly wearInOverhead: boolean;
  /** What lay in stock at the beginning and at the end, or today, by this one currency; null where that is not reckoned. */
  readonly stock: {
    readonly atStart: StockWorth;
    readonly atEnd: StockWorth;
    /** Bought in the year without a delivery that says it was paid, whole minor units. */
    readonly aloneMinor: number;
  } | null;
}

/** What a year comes to, in the currency of the workshop, whole minor units. */
export interface YearStanding {
  readonly span: YearSpan;
  readonly currency: string;
  /** Of the year, those in no sum among them, by day. */
  readonly rows: readonly YearRow[];
  readonly hours: readonly HourRow[];
  readonly takingsMinor: number;
  /** By way of selling, the most first. */
  readonly ways: readonly { readonly sellingWay: string; readonly minor: number }[];
  readonly feesMinor: number;
  readonly tinMinor: number;
  readonly tax: {
    readonly minor: number /** Takings of which no paper says their tax. */;
    readonly untoldMinor: number;
  };
  /** Without machines, which wear instead. */
  readonly expensesMinor: number;
  readonly machinesMinor: number;
  readonly expenses: readonly { readonly kind: Expense['kind']; readonly minor: number }[];
  readonly months: readonly SpanMoney[];
  readonly overhead: OverheadHeld;
  readonly quarters: readonly (DaySpan & OverheadHeld)[];
  /** What lies in stock at the end or today, at what was paid; null where it is not reckoned. */
  readonly stockEndMinor: number | null;
  /** End less beginning; null where it is not reckoned. */
  readonly stockMinor: number | null;
  readonly stockUnknown: number;
  /** What stock bought without a delivery cost beyond the expenses noted for goods: perhaps nobody noted its bill. */
  readonly stockUntoldMinor: number;
  readonly wear: ReturnType<typeof machineWear>;
  /** Of machines whose wear is known. */
  readonly wearMinor: number;
  readonly hoursWorked: number;
  /** What is left for all hours. */
  readonly leftMinor: number;
  /** An hour; null where no hour is known. */
  readonly payMinor: number | null;
  readonly other: readonly {
    readonly currency: string;
    readonly cameMinor: number;
    readonly wentMinor: number;
  }[];
  readonly doubtful: readonly DoubtfulPair[];
  readonly longDays: ReturnType<typeof longDays>;
  /** What plans of the year's closed days reckoned for stall, drive and the rest beyond the expenses noted of stalls. */
  readonly stallUntoldMinor: number;
  readonly designs: readonly DesignResult[];
  readonly fairs: readonly FairResult[];
}

/** @param today YYYY-MM-DD; a year that goes on has worn its machines as far as it has come */
export function yearStanding(noted: YearNoted, span: YearSpan, today: string): YearStanding {
  const steps = yearSteps(noted, span, today);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** The same with stops between, none far from the next, for a page that has to answer meanwhile. */
export function* yearSteps(
  noted: YearNoted,
  span: YearSpan,
  today: string,
): Generator<undefined, YearStanding, undefined> {
  const { currency } = noted;
  const takings = takingRows(noted);
  yield;
  const spending = expenseRows(noted);
  yield;
  const rows = inDayOrder([...takings, ...spending], span);
  yield;
  const worked = hourRows(noted);
  yield;
  const hours = inDayOrder(worked, span);
  const counted = rows.filter(({ leftOut }) => leftOut === null);
  yield;
  const wear = machineWear(noted, span, passedShare(span, today));
  const wearMinor = toMinor(
    wear.machines.reduce((sum, one) => sum + (one.wear ?? 0), 0),
    currency,
  );
  const stockMinor =
    noted.stock === null ? null : paidIn(noted.stock.atEnd, currency) - paidIn(noted.stock.atStart, currency);
  yield;
  const money = moneyOf(counted);
  const tax = taxOf(counted);
  yield;
  const hoursWorked = sumOfHours(hours);
  const leftMinor =
    money.takingsMinor +
    money.feesMinor +
    money.tinMinor -
    tax.minor -
    money.expensesMinor +
    (stockMinor ?? 0) -
    wearMinor;
  const overhead = {
    ...{
      hours,
      rows: counted,
      currency,
      standards: noted.standards.filter(({ withdrawn }) => !withdrawn),
      plans: noted.plans,
    },
    planOfDay: (id: string) =>
      noted.closes.findLast(({ body, withdrawn }) => !withdrawn && body.stallDayId === id)?.body.planId ??
      null,
    ratePerHour: noted.overheadPerHour,
    wearMinor: noted.wearInOverhead ? wearMinor : 0,
  };
  const carried = { overhead: overheadHeld(overhead), quarters: overheadByQuarter(overhead, span.months) };
  yield;
  const doubtful = doubtfulPairs(rows, noted);
  yield;
  return {
    ...carried,
    ...{ span, currency, rows, hours, tax, wear, wearMinor, hoursWorked, leftMinor, stockMinor, ...money },
    months: monthsOf(span, counted),
    stockEndMinor: noted.stock === null ? null : paidIn(noted.stock.atEnd, currency),
    stockUnknown:
      noted.stock === null ? 0 : Math.max(noted.stock.atStart.unknownThings, noted.stock.atEnd.unknownThings),
    stockUntoldMinor: stockUntold(noted, counted),
    payMinor:
      hoursWorked === 0
        ? null
        : toMinor(fromMinor(leftMinor as MinorUnits, currency) / hoursWorked, currency),
    other: othersOf(rows),
    doubtful,
    longDays: longDays(hours),
    stallUntoldMinor: stallUntold(noted, counted, span),
    designs: designResults(noted, span),
    fairs: fairResults(noted.closes, span),
  };
}

// Helpers

const paidIn = ({ paid }: StockWorth, currency: string): number =>
  paid.find((one) => one.currency === currency)?.minor ?? 0;

/** Those of a span; those of a day by what says so, so that no order of entries shows. */
const inDayOrder = <Row extends { readonly day: string; readonly id: string }>(
  rows: readonly Row[],
  span: DaySpan,
): readonly Row[] =>
  // Days are few beside what happened on them: each is put in order for itself.
  [...grouped(rows, ({ day }) => day)]
    .filter(([day]) => isWithin(span, day))
    .toSorted(([one], [other]) => compareText(one, other))
    .flatMap(([, own]) => own.toSorted((one, other) => compareText(one.id, other.id)));

/** @returns the part of the year that has passed with the end of today, 0 to 1 */
function passedShare({ from, to }: DaySpan, today: string): number {
  const dayOf = (day: string) => Date.parse(`${day}T00:00:00Z`) / 86_400_000;
  const long = dayOf(to) - dayOf(from) + 1;
  return Math.min(1, Math.max(0, (dayOf(today) - dayOf(from) + 1) / long));
}

function stockUntold({ stock, expenses }: YearNoted, rows: readonly YearRow[]): number {
  const ids = new Set(expenses.map(({ id }) => id));
  const isForGoods = ({ flow, kind, id }: YearRow) =>
    flow === 'expense' && ['blanks', 'paper', 'ink', 'packaging'].includes(kind) && ids.has(id);
  return Math.max(0, (stock?.aloneMinor ?? 0) + sumOfRows(rows.filter(isForGoods)));
}

function stallUntold(
  { closes, plans, currency }: YearNoted,
  rows: readonly YearRow[],
  span: DaySpan,
): number {
  const closed = fairResults(closes, span).filter((fair) => fair.currency === currency);
  const reckoned = closed.reduce((sum, { stallDayId }) => {
    const planId = closes.findLast(({ body, withdrawn }) => !withdrawn && body.stallDayId === stallDayId)
      ?.body.planId;
    return sum + (plans.find(({ id }) => id === planId)?.body.costs.cash ?? 0);
  }, 0);
  const noted = 0 - sumOfRows(rows.filter(({ flow, kind }) => flow === 'expense' && kind === 'stall'));
  return Math.max(0, toMinor(reckoned, currency) - noted);
}
