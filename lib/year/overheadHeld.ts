import type { DayPaper } from '@/lib/stall/closeInForce';
import { toMinor } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { HourRow, HoursNoted } from './hourRows';
import { sumOfRows, type YearRow } from './yearRow';
import { type DaySpan, isWithin } from './yearSpan';

/** What running the workshop was to cost by what was made, and what it did cost. Whole minor units and hours. */
export interface OverheadHeld {
  /** Hours on orders, runs and stall days at the overhead of an hour they were reckoned with; null where no rate is known. */
  readonly absorbedMinor: number | null;
  readonly hours: number;
  readonly actualMinor: number;
}

/** Expenses that make no single piece dearer, but each hour. */
const overheadKinds: ReadonlySet<string> = new Set(['power', 'rent', 'insurance', 'office', 'advertising']);

interface OverheadAsked {
  /** Of the year. */
  readonly hours: readonly HourRow[];
  readonly rows: readonly YearRow[];
  readonly standards: HoursNoted['standards'];
  readonly plans: readonly DayPaper<'stallPlan', StallPlan>[];
  readonly planOfDay: (stallDayId: string) => string | null;
  /** Of the workshop as it is, currency units an hour; null where it is not known. */
  readonly ratePerHour: number | null;
  readonly currency: string;
  /** Whole minor units of worn machines that the overhead is to pay for; 0 where prices bear wear themselves. */
  readonly wearMinor: number;
}

/** Hours of the workshop itself make nothing, so nothing is absorbed by them. */
export function overheadHeld(asked: OverheadAsked): OverheadHeld {
  const made = asked.hours.filter(({ about, isInClose }) => about.kind !== 'workshop' && !isInClose);
  let absorbed: number | null = 0;
  for (const row of made) {
    const rate = rateOf(row, asked);
    absorbed = absorbed === null || rate === null ? null : absorbed + (row.minutes / 60) * rate;
  }
  const actual = asked.rows.filter(({ flow, kind }) => flow === 'expense' && overheadKinds.has(kind));
  return {
    absorbedMinor: absorbed === null ? null : toMinor(absorbed, asked.currency),
    hours: made.reduce((sum, { minutes }) => sum + minutes, 0) / 60,
    actualMinor: asked.wearMinor - sumOfRows(actual),
  };
}

/** @returns the same for each three months; wear is of the whole year, so none of it is in them. */
export const overheadByQuarter = (
  asked: OverheadAsked,
  months: readonly DaySpan[],
): readonly (DaySpan & OverheadHeld)[] =>
  months.flatMap(({ from }, at) => {
    const to = months[at + 2]?.to;
    if (at % 3 !== 0 || to === undefined) return [];
    const of = <Row extends { readonly day: string }>(rows: readonly Row[]) =>
      rows.filter(({ day }) => isWithin({ from, to }, day));
    const own = { ...asked, hours: of(asked.hours), rows: of(asked.rows), wearMinor: 0 };
    return [{ from, to, ...overheadHeld(own) }];
  });

// Helpers

/** By the paper it was reckoned by, else as the workshop has it now. */
function rateOf({ about }: HourRow, { standards, plans, planOfDay, ratePerHour }: OverheadAsked) {
  if (about.kind === 'run') {
    const works = standards.findLast(({ body }) => body.runId === about.id)?.body.works ?? [];
    const minutes = works.reduce((sum, { labour }) => sum + labour.minutes, 0);
    if (minutes === 0) return ratePerHour;
    const weighted = works.reduce((sum, work) => sum + work.overheadPerHour * work.labour.minutes, 0);
    return weighted / minutes;
  }
  if (about.kind === 'stallDay') {
    const planId = planOfDay(about.id);
    const plan = plans.find(({ id }) => id === planId);
    return plan === undefined ? ratePerHour : plan.body.costs.overheadPerHour;
  }
  return ratePerHour;
}
