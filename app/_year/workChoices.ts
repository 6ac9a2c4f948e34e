import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Hours } from '@/shared/schemas/making/runEvents';

/** Something time can be noted for. */
interface WorkChoice {
  readonly value: string;
  readonly label: string;
  readonly for: Hours['for'];
}

/** The choice of what is of no single order, run or day. */
export const WORKSHOP = 'workshop';

/** @returns the workshop itself first, then runs, orders and stall days by name; those put away are left out. */
export function workChoices({ runs, kinds, stallDays }: ReadyWorkspace): readonly WorkChoice[] {
  const ofKind = (
    kind: 'run' | 'order' | 'stallDay',
    word: string,
    bodies: Readonly<Record<string, { readonly name: string; readonly archivedOn: string | null }>>,
  ): readonly WorkChoice[] =>
    Object.entries(bodies)
      .filter(([, { archivedOn }]) => archivedOn === null)
      .map(([id, { name }]) => ({ value: `${kind} ${id}`, label: `${word}: ${name}`, for: { kind, id } }))
      .toSorted((one, other) => one.label.localeCompare(other.label));
  return [
    { value: WORKSHOP, label: 'The workshop', for: { kind: 'workshop' } },
    ...ofKind('run', 'Run', runs),
    ...ofKind('order', 'Order', kinds.order.bodies),
    ...ofKind('stallDay', 'Stall day', stallDays),
  ];
}
