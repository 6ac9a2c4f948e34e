import { expect, it } from 'vitest';
import { atomsOf, visualOrder } from '@/lib/lettering/atoms';
import { lettersOf, setText } from '@/lib/lettering/letters';
import { missingLetters } from '@/lib/lettering/missingLetters';

/** Capitals stand for Hebrew letters, as in the Unicode standard's own examples. */
const FIRST_HEBREW = 0x5d0;
const hebrew = (text: string) =>
  text.replace(/[A-Z]/g, (letter) => String.fromCharCode(FIRST_HEBREW + letter.charCodeAt(0) - 65));
const back = (text: string) =>
  text.replace(/[א-ת]/g, (letter) => String.fromCharCode(65 + letter.charCodeAt(0) - FIRST_HEBREW));

/** A line as it stands, from the left; the type orders the letters within a Hebrew piece by itself. */
const seen = (text: string, direction: 'auto' | 'ltr' | 'rtl' = 'auto') =>
  back(
    visualOrder(atomsOf(setText(hebrew(text)), direction).atoms)
      .flatMap(({ letters, part }) => (part === 'hebrew' ? letters.toReversed() : letters))
      .join(''),
  );

/* Unicode Standard Annex 9, section 3.4: storage, then display. */
it.each([
  ['car means CAR.', 'car means RAC.'],
  ['\u202bcar MEANS CAR.\u202c', '.RAC SNAEM car'],
  ['he said “\u202bcar MEANS CAR\u202c.”', 'he said “RAC SNAEM car.”'],
])('orders %j as the standard does', (stored, shown) => {
  expect(seen(stored, 'ltr')).toBe(shown);
});

/* Worked by hand from the rules named. */
it.each([
  ['the first letter says where a line begins (P2, P3)', 'AB cd', 'cd BA'],
  ['figures keep their order between Hebrew (W2, L2)', 'AB 123 CD', 'DC 123 BA'],
  ['figures behind a Hebrew name stand at its left (P3, L2)', 'AB 8', '8 BA'],
  ['brackets turn with their line (N0, L4)', 'AB (CD) EF', 'FE (DC) BA'],
  ['Latin in brackets keeps them around it (N0)', 'AB (cd) EF', 'FE (cd) BA'],
  ['a full stop ends a line at its left (N2)', 'AB.', '.BA'],
  ['a decimal comma belongs to its figure (W4)', 'AB 1,5', '1,5 BA'],
  ['a percent sign belongs to its figure (W5)', 'AB 7%', '7% BA'],
  ['a Latin line keeps a Hebrew name in its place (N2)', 'for AB, all pieces', 'for BA, all pieces'],
])('%s', (_, stored, shown) => {
  expect(seen(stored)).toBe(shown);
});

/* Marks without a shape, by hand from the rules named: none is drawn, and the order is what they make it. */
it.each([
  ['the Arabic letter mark begins a line at the right (P2, P3)', '\u061c12 ab', 'ab 12'],
  ['the right-to-left mark does too (P2, P3)', '\u200fab.', '.ab'],
  ['the left-to-right mark begins it at the left (P2, P3)', '\u200eAB.', 'BA.'],
  ['a mark behind a sign takes it to its side (N1)', 'ab CD!\u200f', 'ab !DC'],
  ['an override turns Latin round (X4)', 'x \u202eabc\u202c y', 'x cba y'],
  ['and keeps Hebrew as stored (X5)', 'x \u202dABC\u202c y', 'x ABC y'],
  ['an embedding keeps its sign (X3, N1)', 'AB \u202acd!\u200e\u202c EF', 'FE cd! BA'],
  ['an isolate from the left keeps its sign (X5b)', 'AB \u2066cd!\u2069 EF', 'FE cd! BA'],
  ['an isolate from the right does (X5a)', 'ab \u2067cd!\u2069 ef', 'ab !cd ef'],
  [
    'what joins or parts changes no order (X9)',
    'a\u00adb\u200b\u200c\u200d\u2060\ufeff\u034fA\u206aB',
    'abBA',
  ],
])('%s', (_, stored, shown) => {
  expect(seen(stored)).toBe(shown);
  expect(missingLetters([hebrew(stored)])).toEqual([]);
});

it('sets every space of Unicode as a space', () => {
  const spaces = [0xa0, 0x202f, 0x205f, 0x3000, ...Array.from({ length: 11 }, (__, at) => 0x2000 + at)];
  for (const space of spaces.map((point) => String.fromCodePoint(point))) {
    const codePoint = space.codePointAt(0)?.toString(16);
    expect(missingLetters([`a${space}b`]), codePoint).toEqual([]);
    const letters = lettersOf(setText(`a${space}b`));
    expect(
      letters.map(({ text, isSpace }) => [text, isSpace]),
      codePoint,
    ).toEqual([
      ['a', false],
      [' ', true],
      ['b', false],
    ]);
    // UAX #14: those of class GL hold together what they stand between.
    expect(letters[1]?.mayEndLine, codePoint).toBe(!['\u00a0', '\u2007', '\u202f'].includes(space));
  }
});

it('leaves what has no shape in the pictures of the letters it joins', () => {
  const missing = (text: string) => missingLetters([text]).map(({ letter }) => letter);
  expect(missing('👩\u200d👧')).toEqual(['👩\u200d👧']);
  expect(missing('©\ufe0f')).toEqual(['©\ufe0f']);
  expect(missing('©\ufe0e a\ufe0f \ufe0f')).toEqual([]);
});

it('takes figures behind a Hebrew name into its order, unless the name is kept apart', () => {
  // W7, N1: without isolates the 37 goes to the left of the name; FSI and PDI (X5c) keep it where it was written.
  expect(seen('for AB 37 pieces')).toBe('for 37 BA pieces');
  expect(seen('for \u2068AB\u2069 37 pieces')).toBe('for BA 37 pieces');
});

it('turns the brackets of a Hebrew line round', () => {
  const { atoms, isRightToLeft } = atomsOf(hebrew('A(B'), 'auto');
  expect(isRightToLeft).toBe(true);
  expect(visualOrder(atoms).map(({ letters }) => back(letters.join('')))).toEqual(['B', ')', 'A']);
});

it('keeps Hebrew points on their letters', () => {
  const line = atomsOf(setText('שָׁלוֹם'), 'auto');
  expect(line.atoms.map(({ letters }) => letters.length)).toEqual([4]);
});
