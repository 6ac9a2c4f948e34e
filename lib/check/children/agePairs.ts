import { ageSize, type ChildSize } from './ageSize';

/** Nobody's clothes are called by an age beyond. */
const OLDEST_IN_PAIR = 16;
/** Ages are put together up to so many years, as in 9-11 or 12-14. */
const WIDEST_YEARS = 3;

/**
 * Bare numbers that are ages: "5/6", "7/8" and "12-14" beside others of that sort, common practice. Sizes of grown-ups
 * are paired as well (8/10, 36/38), but always two apart; one pair of years that follow each other tells them apart.
 *
 * @param names of all sizes of one blank
 * @returns the children's among them; none where a bare number beside them is no such age
 */
export function agePairs(names: readonly string[]): ReadonlyMap<string, ChildSize> {
  const ages = names.flatMap((name) => {
    const found = /^(\d{1,3})(?:\s*[-–/]\s*(\d{1,3}))?$/.exec(name.trim());
    return found === null ? [] : [{ name, from: Number(found[1]), to: Number(found[2] ?? found[1]) }];
  });
  const isSeries = ages.every(
    ({ from, to }) => to <= OLDEST_IN_PAIR && from <= to && to - from <= WIDEST_YEARS,
  );
  const pairs = ages.filter(({ from, to }) => to > from);
  if (!isSeries || pairs.length < 2 || !pairs.some(({ from, to }) => to === from + 1)) return new Map();
  return new Map(
    ages.flatMap(({ name, from }) => {
      const child = ageSize(`age ${from}`);
      return child === null ? [] : [[name, child] as const];
    }),
  );
}
