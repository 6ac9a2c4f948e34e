import type { BuyingWork } from '@/lib/buying/buyingAsked';
import { type NeededThing, neededThings } from '@/lib/buying/neededThings';
import { needsOfCosted } from '@/lib/buying/workNeeds';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { foundWorks } from '@/lib/making/foundWorks';
import { planRun } from '@/lib/making/planRun';
import type { FoundWork } from '@/lib/making/runPlan';
import type { StockNeed } from '@/lib/stock/reserved';
import { standardNeeds } from '@/lib/stock/standardNeeds';
import type { Consumable } from '@/shared/schemas/making/supply';
import type { JobInput } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';
import { splitWhole } from '@/shared/splitWhole';
import type { OpenWork } from './openWork';

/** Everything that the needs of open work are worked out from; plain data. */
export interface OpenAsked {
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly bench: Pick<Workshop, 'blocks' | 'daysOff'>;
  readonly consumables: readonly { readonly id: string; readonly consumable: Consumable }[];
  /** Each with the documents of its works, in their order; null where a job is not here. */
  readonly open: readonly (OpenWork & { readonly inputs: readonly (JobInput | null)[] })[];
}

export interface OpenNeeds {
  readonly needs: readonly StockNeed[];
  /** When works of runs that have not begun are pressed, by the clock of each. */
  readonly pressOn: readonly {
    readonly jobId: string;
    readonly orderId: string | null;
    readonly day: string;
  }[];
}

/**
 * What open work is going to use: blanks at its cover, sheets, ink by channel, consumables, each with the day it is
 * wanted at the bench. Of a run that has begun blanks and sheets are those of its standard. Work whose sums do not
 * stand, or whose job is not here, is in none of it.
 *
 * @param grid the thread's formula grid
 */
export function openNeeds({ today, bench, consumables, open }: OpenAsked, grid: Grid): OpenNeeds {
  const parts = open.map((one) => {
    const inputs = new Map(one.works.map(({ jobId }, at) => [jobId, one.inputs[at] ?? null]));
    const works = one.works.map((work) => ({ ...work, stallDayId: null }));
    const found = foundWorks({ works }, (jobId) => inputs.get(jobId) ?? null, grid);
    const day = one.day ?? pressDay(one, found, { today, bench });
    return { one, found, day };
  });
  return {
    needs: parts.flatMap(({ one, found, day }) => needsOf(one, found, day, consumables)),
    pressOn: parts.flatMap(({ one: { run, standard, works }, day }) =>
      run === null || standard !== null || day === null ? [] : works.map((work) => ({ ...work, day })),
    ),
  };
}

// Helpers

type Part = OpenAsked['open'][number];

/** The day of a run's first heating-up; where it has no clock, the first day that may be used. */
function pressDay(
  { run, standard }: Part,
  found: readonly FoundWork[],
  { today, bench }: Pick<OpenAsked, 'today' | 'bench'>,
): string | null {
  if (run === null) return null;
  if (standard !== null) return standard.issuedOn;
  const planned = planRun({ run, found, bench, today });
  return (planned.kind === 'planned' ? planned.plan.sessions[0]?.day : undefined) ?? run.startsOn;
}

function needsOf(
  { by, place, cover, works, standard }: Part,
  found: readonly FoundWork[],
  day: string | null,
  consumables: OpenAsked['consumables'],
): readonly StockNeed[] {
  const asked = found.map((one): BuyingWork | null =>
    one.kind === 'costed'
      ? {
          ...{ jobId: one.work.jobId, orderId: one.work.orderId, name: one.input.job.name },
          ...{ input: one.input, pressOn: null },
        }
      : null,
  );
  const needs = found.map((one, at) => {
    const work = asked[at];
    return one.kind === 'costed' && work != null ? needsOfCosted(work, one.costed) : null;
  });
  const things = neededThings(needs, { list: { cover }, works, consumables });
  // What was laid out when the run began stays laid out, whatever its jobs became since.
  const now =
    standard === null
      ? things
      : things.filter(({ item }) => item.kind === 'ink' || item.kind === 'consumable');
  return [
    ...(standard === null ? [] : standardNeeds(standard)),
    ...now.flatMap((thing) =>
      sharesOf(thing).flatMap((quantity, at): readonly StockNeed[] => {
        const work = works[at];
        return work === undefined || quantity <= 0
          ? []
          : [{ ...work, item: thing.item, quantity, by, place, day }];
      }),
    ),
  ];
}

/** What of a need is each work's, by what each is expected to use; whole things stay whole. */
function sharesOf({ need, expected, byWork }: NeededThing): readonly number[] {
  const exact = byWork.map((use) => (expected > 0 ? (need * use) / expected : 0));
  return Number.isInteger(need) ? splitWhole(need, exact) : exact;
}
