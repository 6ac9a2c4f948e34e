import type { CostCurve } from './curveAnswer';

/** The first few are asked for one by one; larger batches in tens and fifties. */
const FEW = [1, 2, 3, 5] as const;
const TENS_TO = 100;

/** @returns the quantities worth a row: round numbers, steps of sheets and sessions, and what is marked; rising. */
export function tableQuantities({ asked, to, steps, spots, breakEven, knee }: CostCurve): readonly number[] {
  const tens = Array.from({ length: Math.floor(to / 10) }, (_, index) => 10 * (index + 1));
  const marked = [breakEven?.first, breakEven?.lasting, knee?.n, ...spots.map(({ n }) => n), asked];
  const all = [...FEW, ...tens.filter((n) => n <= TENS_TO || n % 50 === 0), ...steps, ...marked, to];
  return [...new Set(all.filter((n) => n != null && n <= to) as number[])].sort((a, b) => a - b);
}
