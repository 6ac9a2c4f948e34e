import type { ChildSize } from './ageSize';

/*
 * EN 13402-3: children's clothes by body height in steps of 6 cm, from 50 on; limits of ages by height from memory.
 * 50 and 56 alone, 98 beside 94 and 102, or 170 and 176 are grown-ups' sizes as well.
 */
const STEP_CM = 6;
const SHORTEST_CM = 50;
const TALLEST_CM = 164;
/** At least one size must be in this part of the series, which grown-ups' sizes do not use alone. */
const SURE_FROM_CM = 62;
const BABY_TO_CM = 92;
const TODDLER_TO_CM = 110;

/** @returns the names that are heights of children; none where a bare number beside them is no such height. */
export function heightSizes(names: readonly string[]): ReadonlyMap<string, ChildSize> {
  const heights = names.flatMap((name) => {
    const found = /^(\d{2,3})(?:\s*[-–/]\s*(\d{2,3}))?(?:\s*cm)?$/i.exec(name.trim());
    return found === null ? [] : [{ name, from: Number(found[1]), to: Number(found[2] ?? found[1]) }];
  });
  const isSeries = heights.every(({ from, to }) => isStep(from) && isStep(to));
  if (!isSeries || !heights.some(({ to }) => to >= SURE_FROM_CM && to <= TALLEST_CM)) return new Map();
  return new Map(heights.flatMap(({ name, to }) => (to > TALLEST_CM ? [] : [[name, ofHeight(to)] as const])));
}

const isStep = (cm: number): boolean => cm >= SHORTEST_CM && (cm - SHORTEST_CM) % STEP_CM === 0;

function ofHeight(cm: number): ChildSize {
  if (cm <= BABY_TO_CM) return 'baby';
  return cm <= TODDLER_TO_CM ? 'toddler' : 'youth';
}
