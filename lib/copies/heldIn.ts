import { neededDocuments, type Registry } from '@/lib/stored/registry';
import type { ArrivalChoice, ArrivalPlan, Choice, DraftMeeting } from './arrival';
import type { Copy } from './copy';

interface Chosen {
  readonly meeting: DraftMeeting;
  readonly choice: Choice;
}

/**
 * Whoever takes a whole copy in has a copy of it, and of all that is here where nothing else is.
 *
 * @returns when the copy was made, where all that will be here is in it as it will be; else null
 */
export function heldIn(
  { copy, here, onlyHere, otherContent }: ArrivalPlan,
  chosen: readonly Chosen[],
  { mode, registry }: { readonly mode: ArrivalChoice['mode']; readonly registry: Registry },
): number | null {
  const needed = new Set(neededDocuments(registry).map(({ id }) => id));
  const happened = new Set([...copy.entries, ...copy.papers].map(({ id }) => id));
  const isOnlyOfCopy =
    chosen.every((one) => isAsInCopy(one, mode)) &&
    // What the copy takes the place of goes, but for what the app cannot be without.
    onlyHere.every(({ id }) => mode === 'replace' && !needed.has(id)) &&
    (mode === 'replace' || here.entries.every(({ id }) => happened.has(id))) &&
    here.papers.every(({ id }) => happened.has(id)) &&
    here.unreadable.length + otherContent.length === 0;
  return isOnlyOfCopy && isWhole(copy) ? copy.madeAt : null;
}

// Helpers

const isAsInCopy = ({ meeting: { state, merged }, choice }: Chosen, mode: ArrivalChoice['mode']): boolean =>
  state === 'same' || (choice === 'theirs' && (mode === 'replace' || merged === null));

const isWhole = ({ of, lacks: { endsEarly, records, files, refused } }: Copy): boolean =>
  of === 'everything' && !endsEarly && records.found === records.of && files.length + refused.length === 0;
