import type { RollUsed } from '@/lib/grid/rollUsed';
import type { formatterFor } from './formatter';

/** @returns how much roll a job takes, as one buys it: “7.4 m of roll, about a quarter of a 30 m roll”. */
export function rollWords(
  { lengthMm, rolls }: RollUsed,
  newRollMm: number | null,
  formatter: ReturnType<typeof formatterFor>,
): string {
  const length = `${formatter.number(lengthMm / 1000, 1)} m of roll`;
  if (rolls === null || newRollMm === null) return length;
  const whole = `${formatter.number(newRollMm / 1000, 1)} m roll`;
  if (rolls > 1.05)
    return `${length}, ${formatter.number(Math.ceil(rolls), 0)} rolls of ${whole.replace(/ roll$/, '')}`;
  const named = PARTS.find(([upTo]) => rolls <= upTo);
  return `${length}, about ${named === undefined ? `a whole ${whole}` : `${named[1]} of a ${whole}`}`;
}

/** Parts people say, each up to half way to the next. */
const PARTS: readonly (readonly [number, string])[] = [
  [0.03, 'a fiftieth'],
  [0.075, 'a twentieth'],
  [0.15, 'a tenth'],
  [0.225, 'a fifth'],
  [0.29, 'a quarter'],
  [0.41, 'a third'],
  [0.58, 'half'],
  [0.7, 'two thirds'],
  [0.87, 'three quarters'],
];
