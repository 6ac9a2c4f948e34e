import type { Atom } from './atoms';

/**
 * Breaks a typed line where it may be broken, and a word that is longer than a line between its letters; letters and
 * their marks stay together, and a letter wider than a line stands alone. Spaces at the end of a line are left out.
 *
 * @param widthOf width of an atom, the same in every line
 * @returns at least one line
 */
export function breakLines(
  atoms: readonly Atom[],
  widthOf: (atom: Atom) => number,
  most: number,
): readonly (readonly Atom[])[] {
  const lines: Atom[][] = [[]];
  let used = 0;
  const put = (atom: Atom) => {
    lines.at(-1)?.push(atom);
    used += widthOf(atom);
  };
  const newLine = () => {
    lines.push([]);
    used = 0;
  };
  for (const word of wordsOf(atoms)) {
    const wide = widthOfLine(withoutLastSpaces(word), widthOf);
    if (used > 0 && used + wide > most) newLine();
    if (wide <= most) {
      for (const atom of word) put(atom);
      continue;
    }
    for (const atom of word) {
      let rest: Atom | null = atom;
      while (rest !== null) {
        const [fits, more] = splitAtom(rest, widthOf, most - used, used === 0);
        if (fits !== null) put(fits);
        if (more !== null) newLine();
        rest = more;
      }
    }
  }
  return lines.map(withoutLastSpaces);
}

/** @returns atoms of a line without the spaces at its end. */
export function withoutLastSpaces(line: readonly Atom[]): readonly Atom[] {
  const last = line.findLastIndex(({ isSpace }) => !isSpace);
  return line.slice(0, last + 1);
}

/** @returns what of a line fits a width; of the first that does not, its first letters. */
export function firstThatFit(
  atoms: readonly Atom[],
  widthOf: (atom: Atom) => number,
  most: number,
): readonly Atom[] {
  const fitting: Atom[] = [];
  let used = 0;
  for (const atom of atoms) {
    const [fits, more] = splitAtom(atom, widthOf, most - used, false);
    if (fits !== null) fitting.push(fits);
    if (more !== null) break;
    used += widthOf(atom);
  }
  return withoutLastSpaces(fitting);
}

/** @returns the width of a line: the sum of what stands in it. */
export const widthOfLine = (atoms: readonly Atom[], widthOf: (atom: Atom) => number): number =>
  atoms.reduce((total, atom) => total + widthOf(atom), 0);

// Helpers

/** Atoms up to where a line may end; the spaces behind a word go with it. */
function wordsOf(atoms: readonly Atom[]): readonly (readonly Atom[])[] {
  const words: Atom[][] = [];
  atoms.forEach((atom, place) => {
    const before = atoms[place - 1];
    if (before === undefined || (before.mayEndLine && !atom.isSpace)) words.push([atom]);
    else words.at(-1)?.push(atom);
  });
  return words;
}

/** Spaces hang over the end of a line: they always fit. */
function splitAtom(
  atom: Atom,
  widthOf: (atom: Atom) => number,
  room: number,
  atLeastOne: boolean,
): readonly [Atom | null, Atom | null] {
  if (atom.isSpace || widthOf(atom) <= room) return [atom, null];
  const { letters } = atom;
  let count = 0;
  while (count < letters.length && widthOf({ ...atom, letters: letters.slice(0, count + 1) }) <= room)
    count += 1;
  if (atLeastOne) count = Math.max(1, count);
  if (count >= letters.length) return [atom, null];
  return [
    count === 0 ? null : { ...atom, letters: letters.slice(0, count) },
    { ...atom, letters: letters.slice(count) },
  ];
}
