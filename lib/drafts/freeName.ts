/** Names longer than this are refused by every document. */
const LONGEST = 120;

/**
 * A name nothing else has.
 *
 * @param taken names in use
 * @returns the wanted name, with a number after it where it is taken
 * @example freeName('A4 sheet', ['A4 sheet']) // => 'A4 sheet 2'
 */
export function freeName(wanted: string, taken: readonly string[]): string {
  const base = wanted.slice(0, LONGEST - 5);
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? base : `${base} ${number}`;
    if (!taken.includes(name)) return name;
  }
}
