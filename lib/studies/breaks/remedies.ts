import type { BreakList } from './breakList';
import type { Selling } from './selling';
import { shiftBreaks } from './shiftBreaks';
import { softenSteps } from './softenSteps';
import type { WrittenTariff } from './writtenTariff';

/**
 * The remedies for a list in which more pieces cost less, in the order they are told.
 *
 * @param tariff the line fitted to the target; null where none can be written
 * @param step the maker's price ending in currency units, above 0
 */
export function remedies(list: BreakList, tariff: WrittenTariff | null, step: number): readonly Selling[] {
  return [
    { kind: 'cap', list },
    { kind: 'slab', list },
    ...(tariff === null ? [] : [{ kind: 'tariff', tariff } as const]),
    { kind: 'softened', list: softenSteps(list, step) },
    { kind: 'shifted', list: shiftBreaks(list) },
  ];
}
