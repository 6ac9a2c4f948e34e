import bidiFactory from 'bidi-js';
import { partOf, type TypePart } from './faceTable';
import { type Letter, lettersOf } from './letters';

/** What is set as one: letters of one part of the type and one direction that stand together and no line parts. */
export interface Atom {
  /** As it is typed. */
  readonly letters: readonly string[];
  /** Null for a picture of the device's type. */
  readonly part: TypePart | null;
  /** Depth in the order of letters: odd runs from right to left. */
  readonly level: number;
  readonly isSpace: boolean;
  /** Whether it is bold whatever stands around it. */
  readonly isBold: boolean;
  /** Whether a line may end behind it. */
  readonly mayEndLine: boolean;
}

export type Direction = 'auto' | 'ltr' | 'rtl';

/** One typed line. */
interface Line {
  readonly atoms: readonly Atom[];
  /** Whether the line as a whole runs from right to left, as its first letter of a direction says. */
  readonly isRightToLeft: boolean;
}

/** Letters are put to it as they come: a copy for each would make long words slow. */
interface GrowingAtom extends Atom {
  readonly letters: string[];
  mayEndLine: boolean;
}

const bidi = bidiFactory();

/**
 * @param text one typed line, as `setText` gives it
 * @param boldTo how many units at its start are bold
 */
export function atomsOf(text: string, direction: Direction, boldTo = 0): Line {
  const found = bidi.getEmbeddingLevels(text, direction);
  const base = found.paragraphs[0]?.level ?? (direction === 'rtl' ? 1 : 0);
  const atoms: GrowingAtom[] = [];
  for (const letter of lettersOf(text)) {
    const level = found.levels[letter.at] ?? base;
    const set = mirrored(letter, level);
    const isBold = letter.at < boldTo;
    const last = atoms.at(-1);
    if (last !== undefined && last.isBold === isBold && goesOn(last, set, level)) {
      last.letters.push(set.text);
      last.mayEndLine = set.mayEndLine;
    } else {
      const { part, isSpace, mayEndLine } = set;
      atoms.push({ letters: [set.text], part, level, isSpace, isBold, mayEndLine });
    }
  }
  return { atoms, isRightToLeft: base % 2 === 1 };
}

/** Brackets turn round where the line runs from the right (rule L4); those of a picture are turned by whoever draws it. */
function mirrored(letter: Letter, level: number): Letter {
  const other = level % 2 === 1 ? bidi.getMirroredCharacter(letter.text) : null;
  const part = other === null ? null : partOf(other);
  return other === null || part === null ? letter : { ...letter, text: other, part };
}

function goesOn(last: Atom, next: Letter, level: number): boolean {
  if (last.part !== next.part || last.level !== level || last.isSpace !== next.isSpace) return false;
  if (last.mayEndLine) return last.isSpace && next.mayEndLine;
  // The tool for type orders Hebrew letters from the right by itself, and no others.
  return next.part === null || (next.part === 'hebrew') === (level % 2 === 1);
}

/** @returns atoms of a line in the order they stand, from the left (rule L2). */
export function visualOrder(atoms: readonly Atom[]): readonly Atom[] {
  const order = [...atoms];
  const levels = order.map(({ level }) => level);
  const lowestOdd = Math.min(...levels.filter((level) => level % 2 === 1));
  for (let depth = Math.max(0, ...levels); depth >= lowestOdd; depth -= 1) {
    for (let start = 0; start < order.length; start += 1) {
      let end = start;
      while ((order[end]?.level ?? -1) >= depth) end += 1;
      if (end - start > 1) order.splice(start, end - start, ...order.slice(start, end).reverse());
      start = Math.max(start, end);
    }
  }
  return order;
}
