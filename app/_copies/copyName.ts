import { dayOf } from '@/app/_clock/dayOf';
import { fileName } from '@/app/_files/saveBlob';

/** @returns a name that tells copies of one day apart: `pressminute-2026-11-26-1410.zip`. */
export const copyName = (made: Date, isBeforeReplacing: boolean): string =>
  `pressminute-${stamp(made)}${isBeforeReplacing ? '-before-replacing' : ''}.zip`;

/** @returns a name that tells the files of one thing apart: `Club shirts 2026-11-26-1410.zip`. */
export const carriedName = (name: string, made: Date): string => fileName(`${name} ${stamp(made)}.zip`);

// Helpers

/** By the maker's own calendar and clock, so that names stand in the order of their making. */
function stamp(made: Date): string {
  const digits = (value: number) => String(value).padStart(2, '0');
  return `${dayOf(made)}-${digits(made.getHours())}${digits(made.getMinutes())}`;
}
