import type { CellRow } from './cells';
import { isNumber } from './findColumns';
import { readKnownSize } from './readSize';
import { sizeKey } from './sizeKey';

/** Columns that the lines of a message are cut into. */
export const messageColumns = ['name', 'size', 'number'] as const;

/**
 * Lines of a message, such as “1. Ana Silva – L – 7” or “Bo M 12”: the size and the number are taken from the end of
 * each, or from its beginning; all else is the name.
 */
export function messageCells(text: string, sizes: readonly string[]): readonly CellRow[] {
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line, at) => ({ line: at + 1, text: line.trim() }))
    .filter((line) => line.text !== '');
  const isListed = lines.every((line, at) => Number(/^(\d+)[.)]\s/.exec(line.text)?.[1]) === at + 1);
  const asSizes = sizesOfMessage(sizes);
  return lines.map(({ line, text: own }) => {
    // Marks of a list say nothing; figures do, unless they count the lines.
    const plain = isListed ? own.replace(/^\d+[.)]\s+/, '') : own.replace(/^[-–—*•·]\s+/, '');
    return { line, cells: cellsOfLine(plain, asSizes) };
  });
}

// Helpers

/** Such a word. */
const BEGINS = /^[\d×*#]|^(?:x|xx|extra|double|triple|youth|kids?|children|junior|one)\b/i;
/** Only these sizes have more than one word. */
const SEVERAL_WORDS = /\d|[×*]|^(?:x|xx|extra|double|triple|youth|kids?|children|junior|one)\b/i;

/** What can be a size among the words of a message. */
interface AsSizes {
  readonly isSize: (part: string) => boolean;
  /** Whether a size of several words may begin with a word: names rarely do, and there are thousands of them. */
  readonly canBegin: (word: string) => boolean;
}

function sizesOfMessage(sizes: readonly string[]): AsSizes {
  // A message has thousands of words, and a handful of sizes among them.
  const known = new Map<string, boolean>();
  const isSize = (part: string): boolean => {
    const before = known.get(part);
    if (before !== undefined) return before;
    const is = readKnownSize(part, sizes) !== null || sizeKey(part).kind === 'letters';
    known.set(part, is);
    return is;
  };
  const own = new Set(sizes.map((size) => size.trim().split(/\s+/)[0]?.toLowerCase()));
  return {
    isSize,
    canBegin: (word) => BEGINS.test(word) || own.has(word.toLowerCase()) || isSize(word),
  };
}

function cellsOfLine(text: string, { isSize, canBegin }: AsSizes): readonly [string, string, string] {
  const parts = text.split(/\s+[-–—]\s+|:\s+|\s{2,}/).filter((part) => part !== '');
  const words = parts.length > 1 ? parts : text.replace(/\(([^()]*)\)$/, ' $1').split(/\s+/);
  const taken = { size: [] as string[], number: [] as string[] };
  const take = (end: 'first' | 'last'): boolean => {
    // “2 x L” is three words; of a table each part is a whole.
    for (const count of parts.length > 1 ? [1] : [3, 2, 1]) {
      // A name is left in any case.
      if (words.length <= count) continue;
      const some = end === 'last' ? words.slice(-count) : words.slice(0, count);
      const cell = some.join(' ');
      // “12 M” is a number and a size far more often than twelve of M.
      if (/^\d+ \S+$/.test(cell)) continue;
      if (count > 1 && !(SEVERAL_WORDS.test(cell) && canBegin(some[0] ?? ''))) continue;
      const part = taken.size.length === 0 && isSize(cell) ? 'size' : isNumber(cell) ? 'number' : null;
      if (part === null || taken[part].length > 0) continue;
      taken[part].push(cell);
      words.splice(end === 'last' ? -count : 0, count);
      return true;
    }
    return false;
  };
  while (take('last'));
  while (taken.size.length === 0 && take('first'));
  return [words.join(' '), taken.size.join(' '), taken.number.join(' ')];
}
