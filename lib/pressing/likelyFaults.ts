import type { Pressing } from '@/shared/schemas/making/runEvents';
import { type PressFault, pressFaults } from '@/shared/tables/faults';

/** As often seen, common practice: from memory. */
const USUAL: readonly PressFault[] = ['ghost', 'specks', 'blurred', 'pale', 'reversed', 'crooked', 'patchy'];

/** @returns all faults, those seen oftenest in these presses first, then as they are usual */
export function likelyFaults(
  pressed: readonly { readonly body: Pick<Pressing, 'fault'> }[],
): readonly PressFault[] {
  const seen = (fault: PressFault) => pressed.filter(({ body }) => body.fault === fault).length;
  const named = [...new Set([...USUAL, ...pressFaults])].filter((fault) => fault !== 'other');
  return [...named.toSorted((one, other) => seen(other) - seen(one)), 'other'];
}
