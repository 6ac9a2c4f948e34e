import { grouped } from '@/shared/grouped';
import type { Hours, WorkElement } from '@/shared/schemas/making/runEvents';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';

/** What of the time noted for an order or a stall day falls to one run of it. */
export interface SharedTime {
  readonly runId: string;
  readonly of: { readonly kind: 'order' | 'stallDay'; readonly id: string };
  readonly element: WorkElement;
  readonly minutes: number;
}

/** A standard of any run, withdrawn ones among them. */
interface AnyStandard {
  readonly id: string;
  readonly withdrawn: boolean;
  readonly body: Pick<RunStandard, 'runId' | 'works'>;
}

/** What is done for a stall day before it; all else that is noted for one is of the day itself. */
export const benchElements: ReadonlySet<string> = new Set<WorkElement>([
  ...(['art', 'proof', 'setUp', 'sheets', 'presses', 'finish', 'pack', 'cleanDown'] as const),
]);

/** @returns the standard that counts of each run: the newest that was not withdrawn, as `runFacts` has it. */
export const standardsInForce = <Of extends AnyStandard>(standards: readonly Of[]): ReadonlyMap<string, Of> =>
  new Map(standards.flatMap((one) => (one.withdrawn ? [] : [[one.body.runId, one] as const])));

/**
 * Time that was noted for an order, or at the bench for a stall day, shared over the runs made for it: an hour that was
 * worked counts in one run, or in several by parts that add to it. Parts go by the minutes that the standards have for
 * that work; where none has any, by all their minutes for that order.
 *
 * @param standards of all runs
 * @returns by run, in the order of the hours; hours of what no run is made for are in none
 */
export function sharedHours(
  hours: readonly { readonly body: Hours }[],
  standards: readonly AnyStandard[],
): ReadonlyMap<string, readonly SharedTime[]> {
  const works = [...standardsInForce(standards).values()].flatMap(({ body }) =>
    body.works.map((work) => ({ runId: body.runId, work })),
  );
  const worksOf = {
    order: grouped(works, ({ work }) => work.orderId ?? ''),
    stallDay: grouped(works, ({ work }) => work.stallDayId ?? ''),
  };
  const shared = hours.flatMap(({ body }): readonly SharedTime[] => {
    const { element, minutes, for: about } = body;
    if (about.kind !== 'order' && about.kind !== 'stallDay') return [];
    if (about.kind === 'stallDay' && !benchElements.has(element)) return [];
    const of = { kind: about.kind, id: about.id };
    const parts = partsOf(worksOf[of.kind].get(of.id) ?? [], element);
    return [...parts].map(([runId, part]) => ({ runId, of, element, minutes: minutes * part }));
  });
  return grouped(shared, ({ runId }) => runId);
}

// Helpers

interface RunWork {
  readonly runId: string;
  readonly work: StandardWork;
}

/** The part of each run, which add to 1; runs that bear nothing of it are left out. */
function partsOf(works: readonly RunWork[], element: WorkElement): ReadonlyMap<string, number> {
  const ways = [
    ({ work }: RunWork) => minutesFor(work, element),
    ({ work }: RunWork) => work.labour.minutes,
    () => 1,
  ];
  for (const weigh of ways) {
    const all = works.reduce((sum, one) => sum + weigh(one), 0);
    if (all <= 0) continue;
    const parts = new Map<string, number>();
    for (const one of works) {
      const part = weigh(one) / all;
      if (part > 0) parts.set(one.runId, (parts.get(one.runId) ?? 0) + part);
    }
    return parts;
  }
  return new Map();
}

const minutesFor = ({ labour }: StandardWork, element: WorkElement): number =>
  labour.elements.reduce((sum, one) => (one.element === element ? sum + one.minutes : sum), 0);
