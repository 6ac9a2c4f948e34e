import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { stallTroubleWords } from '@/app/_words/stall/troubleWords';
import { designKey } from '@/lib/stall/designKey';
import type { DayFigures } from '@/lib/stall/evening/dayFigures';
import { planStall } from '@/lib/stall/plan/planStall';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type {
  GoodsPlanned,
  StallAnswer,
  StallOutcome,
  StallPlanned,
  StallTrouble,
} from '@/lib/stall/plan/stallPlanned';
import type { StallRange } from '@/shared/schemas/stallDay';
import { edgeGrid } from './edgeGrid';

/** One set of numbers. Money in currency units, unrounded; shares 0 to 1; goods of one size have size `""`. */
interface TableOfPlan {
  readonly bring: readonly { readonly design: string; readonly size: string; readonly bring: number }[];
  readonly pieces: number;
  readonly outcomes: readonly Pick<
    StallOutcome,
    | 'weather'
    | 'chance'
    | 'sold'
    | 'netRevenue'
    | 'fees'
    | 'contribution'
    | 'fixed'
    | 'leftoverCost'
    | 'profit'
    | 'payPerHour'
  >[];
  readonly weightedProfit: number;
  readonly spread: Pick<StallPlanned['spread'], 'sd' | 'lossChance' | 'p10' | 'p50' | 'p90'>;
  readonly breakEven: Pick<
    NonNullable<StallPlanned['breakEven']>,
    'cash' | 'withPay' | 'everything' | 'withWriteDown'
  > | null;
  readonly stayHomeBelow: number | null;
  readonly cashBefore: number;
}

interface TableOfStall {
  /** With the maker's numbers where they are held. */
  readonly plan: TableOfPlan;
  readonly advice: TableOfPlan;
  /** Only where the day was counted; money rounded to the coin. */
  readonly day?: DayFigures;
}

type StallTable =
  | {
      readonly kind: 'planned';
      readonly answer: TableOfStall;
      /** Said beside the plan, in words. */
      readonly beside: readonly string[];
    }
  | {
      readonly kind: 'refused';
      readonly answer: { readonly troubles: readonly (StallTrouble & { readonly message: string })[] };
      readonly beside: readonly string[];
    }
  | { readonly kind: 'unusable'; readonly why: string };

/**
 * What the command gives for a stall day: the maker's plan and the advice, or all that stands in the way, in words.
 *
 * @param hold ranges whose numbers stay as the maker holds them in the advice, by id or name in any case
 * @param figures the money of the day; null where it was not counted
 */
export function answerStall(
  asked: StallAsked,
  hold: readonly string[],
  figures: DayFigures | null,
): StallTable {
  const { ranges } = asked.stallDay;
  const unknown = hold.find((named) => rangesNamed(ranges, named).length === 0);
  if (unknown !== undefined) return { kind: 'unusable', why: unknownRange(ranges, unknown) };
  const planned = planStall(asked, edgeGrid());
  if (planned.kind === 'refused') {
    const troubles = planned.troubles.map((trouble) => ({ ...trouble, message: said(trouble, asked) }));
    return { kind: 'refused', answer: { troubles }, beside: troubles.map(({ message }) => message) };
  }
  const table = (plan: StallPlanned) => tableOf(plan, planned.goods, ranges);
  return {
    kind: 'planned',
    beside: planned.troubles.map((trouble) => said(trouble, asked)),
    answer: {
      plan: table(planned.mine),
      advice: table(adviceHolding(asked, hold, planned)),
      ...(figures === null ? {} : { day: figures }),
    },
  };
}

// Helpers

type Planned = Extract<StallAnswer, { readonly kind: 'planned' }>;

/** The advice with some ranges as the maker holds them. */
function adviceHolding(asked: StallAsked, hold: readonly string[], planned: Planned): StallPlanned {
  if (hold.length === 0) return planned.advice;
  const { stallDay } = asked;
  const ranges = hold.flatMap((named) => rangesNamed(stallDay.ranges, named));
  const kept = new Set(ranges.flatMap(({ designs }) => designs.map(designKey)));
  const held = stallDay.held.filter((one) => kept.has(designKey(one)));
  const answer = planStall({ ...asked, stallDay: { ...stallDay, held } }, edgeGrid());
  // Numbers that are let go add no trouble to a day that was planned with them.
  return answer.kind === 'planned' ? answer.mine : planned.advice;
}

const rangesNamed = (ranges: readonly StallRange[], named: string): readonly StallRange[] =>
  ranges.filter(({ id, name }) => [id, name].some((one) => one.toLowerCase() === named.toLowerCase()));

const unknownRange = (ranges: readonly StallRange[], named: string): string =>
  `--hold ${named} names no range of this stall day: name one of them.\n${ranges
    .map(({ id, name }) => `--hold ${id} (${name})`)
    .join('\n')}`;

function said(trouble: StallTrouble, { workshop }: StallAsked): string {
  const context: TextContext = {
    locale: workshop.locale,
    units: workshop.units,
    currency: workshop.currency,
  };
  return stallTroubleWords(trouble, formatterFor(context));
}

function tableOf(
  { bring, pieces, outcomes, weighted, spread, breakEven, goOrStay, cashBefore }: StallPlanned,
  goods: readonly GoodsPlanned[],
  ranges: readonly StallRange[],
): TableOfPlan {
  const { sd, lossChance, p10, p50, p90 } = spread;
  const names = new Map(goods.map((one) => [designKey(one), one.design]));
  return {
    bring: bring.map((one) => ({
      design: names.get(designKey(one)) ?? '',
      size: ranges.find(({ id }) => id === one.rangeId)?.sizes === null ? '' : one.size,
      bring: one.bring,
    })),
    pieces,
    outcomes: outcomes.map(
      ({ weatherIds: _, factor: __, takings: ___, leftovers: ____, ...outcome }) => outcome,
    ),
    weightedProfit: weighted.profit,
    spread: { sd, lossChance, p10, p50, p90 },
    breakEven: breakEven === null ? null : breakEvenOf(breakEven),
    stayHomeBelow: goOrStay.stayHomeBelow,
    cashBefore,
  };
}

const breakEvenOf = ({
  cash,
  withPay,
  everything,
  withWriteDown,
}: NonNullable<StallPlanned['breakEven']>) => ({
  ...{ cash, withPay, everything, withWriteDown },
});
