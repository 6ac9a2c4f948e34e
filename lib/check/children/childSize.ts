import { agePairs } from './agePairs';
import { ageSize, type ChildSize } from './ageSize';
import { heightSizes } from './heightSizes';

/**
 * Which sizes of a piece of clothing are children's, by what they are called: "Youth M", "YL", "3T", "6–12 months",
 * "5-6 years", a pair of ages such as 5/6, or a body height by EN 13402-3 such as 104. Bare numbers are read from all
 * names together, for 98 and 110 beside other numbers are men's sizes, and not at all where the maker says that it is
 * not for children.
 *
 * @param names of all sizes of one blank
 * @param forChildren what the maker says of the blank; null where nobody asked
 * @returns the children's among them, by name
 */
export function childSizes(
  names: readonly string[],
  forChildren: boolean | null,
): ReadonlyMap<string, ChildSize> {
  const numbers = forChildren === false ? [] : [heightSizes(names), agePairs(names)];
  return new Map(
    names.flatMap((name) => {
      const child =
        wordSize(name) ?? ageSize(name) ?? numbers.find((found) => found.has(name))?.get(name) ?? null;
      return child === null ? [] : [[name, child] as const];
    }),
  );
}

/** What the words of a name say; common practice of suppliers. */
function wordSize(name: string): ChildSize | null {
  if (/\b(babies|baby|infants?|newborn|nb)\b/i.test(name)) return 'baby';
  if (/\btoddlers?\b/i.test(name)) return 'toddler';
  if (/\b(youths?|child|children|kids?|boys?|girls?|juniors?)\b/i.test(name)) return 'youth';
  // Letters of a youth size, as on the label: YXS to YXL.
  return /^Y(XS|S|M|L|XL)$/i.test(name.trim()) ? 'youth' : null;
}
