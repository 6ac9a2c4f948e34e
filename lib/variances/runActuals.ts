import { isClosedBy, type RunFacts } from '@/lib/making/runFacts';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { RunActual } from '@/shared/schemas/making/runEvents';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import type { MadeSize } from './goodMade';
import type { RunBudget } from './runBudget';
import type { ElementTime, RunTime } from './runTime';

/** Whence a figure comes: typed, counted at the press or the printer, of a delivery, or nobody noted it. */
export type ActualFrom = 'typed' | 'counted' | 'goodsIn' | 'standard';

interface ActualUse {
  readonly quantity: number;
  /** What one cost; as the budget has it where none was used. */
  readonly each: number;
  readonly cost: number;
  readonly quantityFrom: ActualFrom;
  readonly eachFrom: ActualFrom;
}

interface ActualAmount {
  readonly amount: number;
  readonly from: ActualFrom;
}

/** What a run took, currency units. What nobody noted is as its budget has it, and says so. */
export interface RunActuals {
  readonly blanks: ActualUse;
  readonly sheets: ActualUse;
  readonly ink: ActualUse;
  /** Hours. */
  readonly labour: ActualUse;
  readonly elements: readonly ElementTime[];
  readonly freight: ActualAmount;
  readonly otherCost: ActualAmount;
  readonly fees: ActualAmount;
  /** Where nobody noted any: all that is held for them until the run is closed, nothing from then on. */
  readonly reprints: ActualAmount;
  readonly revenue: ActualAmount | null;
  /** In which amounts were noted last that the run is not reckoned in: they count for nothing. */
  readonly otherCurrencies: readonly string[];
}

/** Prices paid for what the run is made of, currency units; null where no delivery tells. */
export interface PricesPaid {
  readonly blank: (blankId: string, size: string) => number | null;
  /** Of a sheet, or of a metre of a roll. */
  readonly sheet: (sheetId: string) => number | null;
}

type Facts = Pick<RunFacts, 'actuals' | 'blankFaults' | 'sheetsPrinted' | 'steps'>;

/**
 * What was noted of a run, folded: of each kind the newest counts.
 *
 * @param standard that for the pieces made, as its budget: prices are weighed by the sizes that were drawn for them
 * @param facts entries in force, in the store's one order
 * @param time what it took
 */
export function runActuals(
  { works, currency }: Pick<RunStandard, 'works' | 'currency'>,
  budget: RunBudget,
  made: readonly MadeSize[] | null,
  facts: Facts,
  paid: PricesPaid,
  time: RunTime,
): RunActuals {
  const noted = newestOf(
    facts.actuals.map(({ body }) => body),
    currency,
  );
  const hours = time.minutes / 60;
  const printed = facts.sheetsPrinted.reduce((sum, { body }) => sum + body.good + body.rejected, 0);
  const amount = (of: AmountKind, otherwise: number): ActualAmount => {
    const found = noted.amounts.get(of);
    return found === undefined ? { amount: otherwise, from: 'standard' } : { amount: found, from: 'typed' };
  };
  return {
    blanks: takenOf(
      budget.blanks,
      noted.blanks,
      countedBlanks(made, facts),
      paidForBlanks(works, budget.blanks.each, paid),
    ),
    sheets: takenOf(
      budget.sheets,
      noted.sheets,
      printed > 0 ? printed : null,
      paidForSheets(works, budget.sheets.each, paid),
    ),
    ink: takenOf(budget.ink, noted.ink, null, null),
    labour: {
      quantity: hours,
      each: budget.labour.each,
      cost: hours * budget.labour.each,
      quantityFrom: time.isNoted ? 'counted' : 'standard',
      eachFrom: 'standard',
    },
    elements: time.elements,
    freight: amount('freight', budget.freight),
    otherCost: amount('otherCost', budget.otherCost),
    fees: amount('fees', budget.fees),
    reprints: amount('reprints', isClosedBy(facts.steps) ? 0 : budget.reprints),
    revenue: budget.revenue === null ? revenueTyped(noted.amounts) : amount('revenue', budget.revenue),
    otherCurrencies: noted.otherCurrencies,
  };
}

// Helpers

type AmountKind = 'freight' | 'otherCost' | 'fees' | 'reprints' | 'revenue';

interface NotedUse {
  readonly quantity: number;
  readonly amount: number | null;
}

/** Money of another currency says nothing here: what was used of it still does. */
function newestOf(actuals: readonly RunActual[], runCurrency: string) {
  const amounts = new Map<AmountKind, number>();
  const currencies = new Map<RunActual['actual']['of'], string>();
  let blanks: NotedUse | null = null;
  let sheets: NotedUse | null = null;
  let ink: NotedUse | null = null;
  for (const { actual, currency } of actuals) {
    const isOwn = currency === runCurrency;
    if ('amountMinor' in actual && actual.amountMinor !== null) currencies.set(actual.of, currency);
    const units = (minor: number | null) =>
      minor === null || !isOwn ? null : fromMinor(minor as MinorUnits, currency);
    if (actual.of === 'ink') ink = { quantity: actual.mL, amount: null };
    else if (actual.of === 'blanks')
      blanks = { quantity: actual.quantity, amount: units(actual.amountMinor) };
    else if (actual.of === 'sheets')
      sheets = { quantity: actual.quantity, amount: units(actual.amountMinor) };
    else if (isOwn) amounts.set(actual.of, fromMinor(actual.amountMinor as MinorUnits, currency));
  }
  const otherCurrencies = [...new Set(currencies.values())].filter((one) => one !== runCurrency);
  return { amounts, blanks, sheets, ink, otherCurrencies };
}

/** What is typed comes before what is counted, and that before the budget; of prices likewise. */
function takenOf(
  budget: { readonly quantity: number; readonly each: number },
  typed: NotedUse | null,
  counted: number | null,
  paid: number | null,
): ActualUse {
  const quantity = typed?.quantity ?? counted ?? budget.quantity;
  const amount = typed?.amount ?? null;
  const cost = amount ?? quantity * (paid ?? budget.each);
  const each = cost / quantity;
  return {
    ...{ quantity, cost },
    each: Number.isFinite(each) ? each : budget.each,
    quantityFrom: typed !== null ? 'typed' : counted !== null ? 'counted' : 'standard',
    eachFrom: amount !== null ? 'typed' : paid !== null ? 'goodsIn' : 'standard',
  };
}

/** Blanks that went into the presses, and those found faulty before. */
function countedBlanks(made: readonly MadeSize[] | null, { blankFaults }: Pick<Facts, 'blankFaults'>) {
  if (made === null) return null;
  return (
    made.reduce((sum, { drawn }) => sum + drawn, 0) +
    blankFaults.reduce((sum, { body }) => sum + body.pieces, 0)
  );
}

/**
 * What a blank cost, by how much each size was dearer or cheaper than planned, as the budget draws them; where no piece
 * came good as they were laid out. So sizes paid at their planned prices cost the mean of the budget.
 *
 * @returns null where no delivery tells of any
 */
function paidForBlanks(works: readonly StandardWork[], budgetEach: number, paid: PricesPaid): number | null {
  const sizes = works.flatMap(({ lines }) =>
    lines.flatMap((line) => line.sizes.map((size) => ({ blankId: line.blankId, ...size }))),
  );
  const isAnyMade = sizes.some(({ wanted }) => wanted > 0);
  return paidEach(
    budgetEach,
    sizes.map(({ blankId, size, wanted, blanksEach, take, price }) => ({
      quantity: isAnyMade ? wanted * blanksEach : take,
      price,
      paid: paid.blank(blankId, size),
    })),
  );
}

const paidForSheets = (works: readonly StandardWork[], budgetEach: number, paid: PricesPaid): number | null =>
  paidEach(
    budgetEach,
    works.map(({ sheets: { sheetId, quantity, price, metresEach = 1 } }) => {
      const found = paid.sheet(sheetId);
      return { quantity, price, paid: found === null ? null : found * metresEach };
    }),
  );

function paidEach(
  budgetEach: number,
  rows: readonly { readonly quantity: number; readonly price: number; readonly paid: number | null }[],
): number | null {
  const all = rows.reduce((sum, { quantity }) => sum + quantity, 0);
  if (all === 0 || rows.every((row) => row.paid === null)) return null;
  const more = rows.reduce((sum, { quantity, price, paid }) => sum + quantity * ((paid ?? price) - price), 0);
  return budgetEach + more / all;
}

function revenueTyped(amounts: ReadonlyMap<AmountKind, number>): ActualAmount | null {
  const amount = amounts.get('revenue');
  return amount === undefined ? null : { amount, from: 'typed' };
}
