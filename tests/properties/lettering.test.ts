import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Atom, atomsOf, visualOrder } from '@/lib/lettering/atoms';
import { breakLines, firstThatFit, widthOfLine } from '@/lib/lettering/breakLines';
import { lettersOf, setText } from '@/lib/lettering/letters';
import { cases } from '../tools/cases';

/** Texts as they come: several scripts, figures, marks, spaces and signs beside each other. */
const texts = fc
  .array(
    fc.constantFrom(
      'a',
      'Ж',
      'ש',
      'ָ',
      'ễ',
      'e\u0323',
      'ő',
      '8',
      ' ',
      '\u00a0',
      '(',
      ')',
      '-',
      'ع',
      '漢',
      '👩‍👧',
      '\u2068',
      '\u2069',
      '.',
    ),
    { maxLength: 40 },
  )
  .map((parts) => setText(parts.join('')));

/** Any widths do: here a letter's own, by its first code point. */
const widthOfLetter = (letter: string): number => 1 + ((letter.codePointAt(0) ?? 0) % 7);
const widthOf = ({ letters }: Atom): number =>
  letters.reduce((sum, letter) => sum + widthOfLetter(letter), 0);

const drawn = (atoms: readonly Atom[]) => atoms.flatMap(({ letters }) => letters).join('');
const withoutSpaces = (text: string) => text.replaceAll(' ', '');

it('loses no letter where lines break, and keeps lines within their width', () => {
  fc.assert(
    fc.property(texts, fc.integer({ min: 1, max: 60 }), (text, most) => {
      const { atoms } = atomsOf(text, 'auto');
      const lines = breakLines(atoms, widthOf, most);
      expect(withoutSpaces(lines.map(drawn).join(''))).toBe(withoutSpaces(drawn(atoms)));
      for (const line of lines) {
        const isOneLetter = line.flatMap(({ letters }) => letters).length === 1;
        expect(isOneLetter || widthOfLine(line, widthOf) <= most).toBe(true);
      }
    }),
    cases(300),
  );
});

it('draws every letter of a text once, in whatever order', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const { atoms } = atomsOf(text, 'auto');
      const typed = lettersOf(text).map((letter) => letter.text);
      // Brackets may be turned round.
      const alike = (letters: readonly string[]) =>
        letters.map((one) => (one === ')' ? '(' : one)).toSorted();
      expect(alike(visualOrder(atoms).flatMap(({ letters }) => letters))).toEqual(alike(typed));
    }),
    cases(300),
  );
});

it('is as wide in any order as its parts together', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const { atoms } = atomsOf(text, 'auto');
      expect(widthOfLine(visualOrder(atoms), widthOf)).toBe(widthOfLine(atoms, widthOf));
    }),
    cases(200),
  );
});

it('shortens to what fits, and to the beginning of the text', () => {
  fc.assert(
    fc.property(texts, fc.integer({ min: 0, max: 60 }), (text, most) => {
      const { atoms } = atomsOf(text, 'auto');
      const kept = firstThatFit(atoms, widthOf, most);
      expect(widthOfLine(kept, widthOf)).toBeLessThanOrEqual(most);
      expect(drawn(atoms).startsWith(drawn(kept))).toBe(true);
    }),
    cases(200),
  );
});

/** Letter by letter: what breaking a word that is longer than its line has to come to. */
function brokenSimply(letters: readonly string[], most: number): readonly string[] {
  const lines: { text: string; wide: number }[] = [];
  for (const letter of letters) {
    const last = lines.at(-1);
    const wide = widthOfLetter(letter);
    if (last === undefined || last.wide + wide > most) lines.push({ text: letter, wide });
    else Object.assign(last, { text: last.text + letter, wide: last.wide + wide });
  }
  return lines.map(({ text }) => text);
}

const longWords = fc
  .array(fc.constantFrom('a', 'ễ', 'Ж', 'ő', 'ع', 'ש', '8'), { minLength: 1, maxLength: 300 })
  .map((parts) => setText(parts.join('')));

it('breaks and shortens a long word where going letter by letter would', () => {
  fc.assert(
    fc.property(longWords, fc.integer({ min: 1, max: 200 }), (text, most) => {
      const { atoms } = atomsOf(text, 'auto');
      const letters = atoms.flatMap((atom) => atom.letters);
      const lines = brokenSimply(letters, most);
      expect(breakLines(atoms, widthOf, most).map(drawn)).toEqual(lines);
      const isFirstTooWide = widthOfLetter(letters[0] ?? '') > most;
      expect(drawn(firstThatFit(atoms, widthOf, most))).toBe(isFirstTooWide ? '' : lines[0]);
    }),
    cases(200),
  );
});

it('measures a word of 3,000 letters a few times over, not once for each line', () => {
  const letters = Array.from({ length: 3000 }, (_, at) => 'abcdefg'[(at * at) % 7] ?? '');
  const { atoms } = atomsOf(letters.join(''), 'auto');
  let measured = 0;
  const counting = (atom: Atom) => {
    measured += atom.letters.length;
    return widthOf(atom);
  };
  // A line of 100 holds 14 to 100 letters; each line is tried at most twice as long, and halved into at most seven times.
  const lines = breakLines(atoms, counting, 100);
  expect(lines.map(drawn)).toEqual(brokenSimply(letters, 100));
  expect(measured).toBeLessThan(3000 * 15);
});
