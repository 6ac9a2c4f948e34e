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
const widthOf = ({ letters }: Atom): number =>
  letters.reduce((sum, letter) => sum + 1 + ((letter.codePointAt(0) ?? 0) % 7), 0);

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
