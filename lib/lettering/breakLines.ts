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
      const all = atom.letters.length;
      let from = 0;
      while (from < all) {
        const fitting = lettersThatFit(atom, from, widthOf, most - used);
        const to = from + (used === 0 ? Math.max(1, fitting) : fitting);
        if (to > from) put(partOfAtom(atom, from, to));
        if (to < all) newLine();
        from = to;
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
    const count = lettersThatFit(atom, 0, widthOf, most - used);
    if (count > 0) fitting.push(partOfAtom(atom, 0, count));
    if (count < atom.letters.length) break;
    used += widthOf(atom);
  }
  return withoutLastSpaces(fitting);
}

/** @returns the width of a line: the sum of what stands in it. */
export const widthOfLine = (atoms: readonly Atom[], widthOf: (atom: Atom) => number): number =>
  atoms.reduce((total, atom) => total + widthOf(atom), 0);

// Helpers

/** Letters of a usual word. */
const FIRST_TRY = 8;

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

const partOfAtom = (atom: Atom, from: number, to: number): Atom =>
  from === 0 && to === atom.letters.length ? atom : { ...atom, letters: atom.letters.slice(from, to) };

/**
 * How many letters of an atom fit, from one on. Spaces hang over the end of a line: they always fit. Letters are
 * measured together, since they may be kerned or join; doubling until they no longer fit and halving after that measures
 * a few times what fits, and never all that is left.
 */
function lettersThatFit(atom: Atom, from: number, widthOf: (atom: Atom) => number, room: number): number {
  const all = atom.letters.length - from;
  if (atom.isSpace) return all;
  const fits = (count: number) => widthOf(partOfAtom(atom, from, from + count)) <= room;
  let fitting = 0;
  let tooMany = Math.min(FIRST_TRY, all);
  while (fits(tooMany)) {
    fitting = tooMany;
    if (fitting === all) return all;
    tooMany = Math.min(2 * tooMany, all);
  }
  while (tooMany - fitting > 1) {
    const middle = Math.floor((fitting + tooMany) / 2);
    if (fits(middle)) fitting = middle;
    else tooMany = middle;
  }
  return fitting;
}
