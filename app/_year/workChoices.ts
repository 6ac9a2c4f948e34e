import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { isClosedBy } from '@/lib/making/runFacts';
import { grouped } from '@/shared/grouped';
import type { Hours } from '@/shared/schemas/making/runEvents';

/** Something time can be noted for. */
interface WorkChoice {
  readonly value: string;
  readonly label: string;
  readonly for: Hours['for'];
}

type Works = Pick<ReadyWorkspace, 'runs' | 'stallDays'> & {
  readonly kinds: Pick<ReadyWorkspace['kinds'], 'order'>;
  readonly entries: Pick<ReadyWorkspace['entries'], 'runStep'>;
};

/** The choice of what is of no single order, run or day. */
export const WORKSHOP = 'workshop';

/** @returns the workshop itself first, then runs, orders and stall days by name, runs that are closed last; those put away are left out. */
export function workChoices({ runs, kinds, stallDays, entries }: Works): readonly WorkChoice[] {
  const ofKind = (
    kind: 'run' | 'order' | 'stallDay',
    word: string,
    bodies: Readonly<Record<string, { readonly name: string; readonly archivedOn: string | null }>>,
  ): readonly WorkChoice[] =>
    Object.entries(bodies)
      .filter(([, { archivedOn }]) => archivedOn === null)
      .map(([id, { name }]) => ({ value: `${kind} ${id}`, label: `${word}: ${name}`, for: { kind, id } }))
      .toSorted((one, other) => one.label.localeCompare(other.label));
  const stepsOf = grouped(entries.runStep, ({ body }) => body.runId);
  const isClosed = (id: string): boolean => isClosedBy(stepsOf.get(id) ?? []);
  const some = (isOver: boolean) =>
    Object.fromEntries(Object.entries(runs).filter(([id]) => isClosed(id) === isOver));
  return [
    { value: WORKSHOP, label: 'The workshop', for: { kind: 'workshop' } },
    ...ofKind('run', 'Run', some(false)),
    ...ofKind('order', 'Order', kinds.order.bodies),
    ...ofKind('stallDay', 'Stall day', stallDays),
    ...ofKind('run', 'Closed run', some(true)),
  ];
}
