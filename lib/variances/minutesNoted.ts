import type { Hours, WorkElement } from '@/shared/schemas/making/runEvents';
import type { RunBudget } from './runBudget';

/** Minutes of one element of work; `actual` null where nobody noted any. */
export interface ElementTime {
  readonly element: string;
  readonly standard: number;
  readonly actual: number | null;
}

const REST: WorkElement = 'rest';

/**
 * Time noted, held against its budget. An element that nobody noted is taken as the budget has it, unless somebody
 * noted all the rest of the run in one.
 *
 * @returns minutes by element, and hours in all
 */
export function timesOf(
  { elements }: Pick<RunBudget, 'elements'>,
  hours: readonly Hours[],
): { readonly elements: readonly ElementTime[]; readonly hours: number; readonly isNoted: boolean } {
  const noted = new Map<string, number>();
  for (const { element, minutes } of hours) noted.set(element, (noted.get(element) ?? 0) + minutes);
  const planned = new Map(elements.map(({ element, minutes }) => [element, minutes]));
  const names = [...new Set([...planned.keys(), ...noted.keys()])];
  const rows = names.map((element) => ({
    element,
    standard: planned.get(element) ?? 0,
    actual: noted.get(element) ?? null,
  }));
  const isAllTold = noted.has(REST);
  const minutes = rows.reduce((sum, { standard, actual }) => sum + (actual ?? (isAllTold ? 0 : standard)), 0);
  return { elements: rows, hours: minutes / 60, isNoted: noted.size > 0 };
}
