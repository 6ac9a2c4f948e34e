import type { RunFacts, StandardPaper } from '@/lib/making/runFacts';
import { standardFor } from '@/lib/making/standard/standardFor';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import { splitWhole } from '@/shared/splitWhole';
import type { GapCause } from '@/shared/tables/faults';
import { type Gap, gapsOf } from './gapsOf';
import { goodMade, type MadeSize } from './goodMade';
import { type LostBlanks, lostBlanks } from './lostBlanks';
import { type PricesPaid, type RunActuals, runActuals } from './runActuals';
import { type RunBudget, runBudget } from './runBudget';
import { runTime, type TimeNoted } from './runTime';
import { type Spares, sparesOf } from './sparesOf';

/** A bar of the bridge: a gap in whole minor units, with why the maker says it came. */
export interface BridgeBar extends Gap {
  readonly minor: MinorUnits;
  readonly cause: { readonly cause: GapCause; readonly note: string; readonly entryId: string } | null;
}

/** What a run leaves, by a price. Currency units, unrounded. */
interface Outcome {
  readonly revenue: number;
  readonly profit: number;
  /** Of the revenue; null where there is none. */
  readonly margin: number | null;
  /** Profit and own pay of an hour worked; null without any hours. */
  readonly payPerHour: number | null;
  readonly hours: number;
}

/** A run held against its standard. */
export interface RunResult {
  readonly currency: string;
  readonly budget: RunBudget;
  readonly actuals: RunActuals;
  readonly made: readonly MadeSize[] | null;
  /** Good pieces beyond what was ordered, and seconds: what of them was bought is in stock and no loss. */
  readonly spares: Spares;
  readonly lost: readonly LostBlanks[];
  /** Whole minor units that add up: from + bars = to. Null where no price was asked. */
  readonly bridge: { readonly from: MinorUnits; readonly to: MinorUnits } | null;
  /** All lines, those that came as planned among them. */
  readonly bars: readonly BridgeBar[];
  /** All bars, whole minor units. */
  readonly sum: MinorUnits;
  readonly quoted: Outcome | null;
  readonly came: Outcome | null;
}

/** What a result is reckoned from beside the standard. */
interface ResultAsked {
  readonly facts: Pick<
    RunFacts,
    'pressings' | 'actuals' | 'blankFaults' | 'sheetsPrinted' | 'hours' | 'steps'
  >;
  readonly paid: PricesPaid;
  /** Its parts of the hours of its orders and stall days. */
  readonly orderHours: TimeNoted['shared'];
}

/**
 * Why a run left what it left. Amounts shown are whole minor units: the profit of the standard and the sum of all gaps are
 * rounded, and the gaps split that sum by largest remainder. What is held for reprints is a reserve: it is rounded for
 * itself, so that the others come to the same whether or not it was needed.
 */
export function runResult({ body: standard }: Pick<StandardPaper, 'body'>, asked: ResultAsked): RunResult {
  const { facts, paid, orderHours } = asked;
  const { currency, works } = standard;
  const pressings = facts.pressings.map(({ body }) => body);
  const made = goodMade(standard, pressings);
  const frozen = runBudget(standard);
  const forMade = made === null ? standard : standardFor(standard, made);
  const budget = runBudget(forMade);
  const spares = sparesOf(standard, made ?? []);
  const hours = facts.hours.map(({ body }) => body);
  const time = runTime({ standard, pressings, hours, shared: orderHours });
  const actuals = runActuals(forMade, budget, made, facts, paid, time);
  const gaps = gapsOf(frozen, budget, actuals, spares.cost);
  const change = gaps.reduce((running, { amount }) => running + amount, 0);
  const minors = wholeGaps(gaps, currency);
  const sum = minors.reduce((running, minor) => running + minor, 0) as MinorUnits;
  const quotedProfit = works.reduce(
    (running, work) => running + (work.revenue ?? 0) - work.fees - work.fullCost,
    0,
  );
  const hasPrice = frozen.revenue !== null;
  const from = toMinor(quotedProfit, currency);
  const blanksGap = gaps.find(({ line }) => line === 'blanksUsage')?.amount ?? 0;
  return {
    ...{ currency, budget, actuals, made, spares, sum },
    lost: lostBlanks(
      blanksGap,
      pressings,
      facts.blankFaults.map(({ body }) => body),
      unaccountedFor(
        actuals,
        made,
        facts.blankFaults.reduce((all, { body }) => all + body.pieces, 0),
      ),
    ),
    bridge: hasPrice ? { from, to: (from + sum) as MinorUnits } : null,
    bars: gaps.map((gap, at) => ({
      ...gap,
      minor: ((minors[at] ?? 0) || 0) as MinorUnits,
      cause: causeOf(facts.steps, gap.line),
    })),
    quoted: hasPrice ? outcomeOf(frozen.revenue ?? 0, quotedProfit, frozen.labour) : null,
    came:
      hasPrice && actuals.revenue !== null
        ? outcomeOf(actuals.revenue.amount, quotedProfit + change, actuals.labour)
        : null,
  };
}

// Helpers

function wholeGaps(gaps: readonly Gap[], currency: string): readonly number[] {
  const used = gaps.filter(({ line }) => line !== 'reprints');
  const all = used.reduce((running, { amount }) => running + amount, 0);
  const split = splitWhole(
    toMinor(all, currency),
    used.map(({ amount }) => inMinor(amount, currency)),
  );
  return gaps.map((gap) => split[used.indexOf(gap)] ?? toMinor(gap.amount, currency));
}

const inMinor = (amount: number, currency: string): number => amount / fromMinor(1 as MinorUnits, currency);

function outcomeOf(
  revenue: number,
  profit: number,
  labour: { readonly quantity: number; readonly each: number },
): Outcome {
  const { quantity: hours, each } = labour;
  return {
    ...{ revenue, profit, hours },
    margin: revenue > 0 ? profit / revenue : null,
    payPerHour: hours > 0 ? profit / hours + each : null,
  };
}

/** Used beyond what came out and what is noted as lost; nothing is known of those. */
function unaccountedFor({ blanks }: RunActuals, made: readonly MadeSize[] | null, faulty: number): number {
  if (made === null || blanks.quantityFrom === 'standard') return 0;
  const known = made.reduce((sum, { good, seconds, scrap }) => sum + good + seconds + scrap, 0) + faulty;
  return Math.max(0, blanks.quantity - known);
}

/** The newest word on a line counts. */
function causeOf(steps: RunFacts['steps'], line: GapLine): BridgeBar['cause'] {
  const found = steps.findLast(({ body: { step } }) => step.what === 'cause' && step.line === line);
  if (found?.body.step.what !== 'cause') return null;
  const { cause, note } = found.body.step;
  return { cause, note, entryId: found.id };
}
