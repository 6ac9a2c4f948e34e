import type { BreakList } from '@/lib/price/list/breakList';
import type { Selling, WrittenTariff } from '@/lib/price/list/selling';
import { shiftBreaks } from './shiftBreaks';
import { softenSteps } from './softenSteps';

/**
 * The remedies for a list in which more pieces cost less, in the order they are told.
 *
 * @param tariff what the line would be written at with its set-up apart
 * @param step the maker's price ending in currency units, above 0
 */
export const remedies = (list: BreakList, tariff: WrittenTariff, step: number): readonly Selling[] => [
  { kind: 'capped', list },
  { kind: 'setUpApart', tariff },
  { kind: 'slab', list },
  { kind: 'softened', list: softenSteps(list, step) },
  { kind: 'shifted', list: shiftBreaks(list) },
];
