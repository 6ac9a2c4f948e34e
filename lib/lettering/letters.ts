import { partOf, type TypePart } from './faceTable';

/** A letter with its marks, or whatever else is one to a reader: never taken apart. */
export interface Letter {
  /** What is drawn. */
  readonly text: string;
  /** Place of its first unit in the text it stands in. */
  readonly at: number;
  /** Null where no part of the type has it: then it is drawn as a picture. */
  readonly part: TypePart | null;
  readonly isSpace: boolean;
  /** Whether it may end a line before the next letter, as a space, a hyphen or an ideograph may. */
  readonly mayEndLine: boolean;
}

/** Rules of what is one letter are the same in every language. */
const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * What orders, joins or parts others and has no shape itself: it counts for the order and is not drawn. The sign that
 * makes an emoji of a letter (U+FE0F) gives it another shape.
 */
const SHAPELESS = /(?!(?<=\p{Emoji})\uFE0F)[\p{Default_Ignorable_Code_Point}\u2028\u2029]/gu;
/** All but the end of a line. */
export const CONTROL = /[^\P{Cc}\n]/gu;
/** Every space of Unicode but that of Ogham (U+1680), which is a stroke. */
const SPACE = /^[ \u00A0\u2000-\u200A\u202F\u205F\u3000]/;
/** Spaces no line ends at: that of a figure too (UAX #14, class GL). */
const HOLDING_SPACE = /^[\u00A0\u2007\u202F]/;
const HYPHEN = /[-\u2010\u2013\u2014]$/;
const IDEOGRAPH = /^[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}]/u;
/** A sign in front of a figure is no hyphen. */
const LETTER_OR_DIGIT = /[\p{L}\p{M}\p{N}]$/u;

/**
 * A text as it is set: letters and marks composed where there is one for both, tabs and odd spaces as spaces, other
 * control characters gone (`missingLetters` names them). Lines that were typed stay lines.
 */
export function setText(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\r\n?|[\u0085\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(CONTROL, '');
}

/** @param text one line, as `setText` gives it */
export function lettersOf(text: string): readonly Letter[] {
  const letters: Letter[] = [];
  let before = '';
  for (const { segment, index } of segmenter.segment(text)) {
    const shape = segment.replace(SHAPELESS, '');
    if (shape === '') {
      const last = letters.at(-1);
      if (segment === '\u200B' && last !== undefined)
        letters[letters.length - 1] = { ...last, mayEndLine: true };
      continue;
    }
    letters.push({ at: index, ...(SPACE.test(shape) ? spaceOf(shape) : signOf(shape, segment, before)) });
    before = shape;
  }
  return letters;
}

// Helpers

type Shape = Omit<Letter, 'at'>;

/** Every space is set as the usual one, whatever its own width: no part of the type has them all. */
const spaceOf = (shape: string): Shape => ({
  text: ' ',
  part: 'latin',
  isSpace: true,
  mayEndLine: !HOLDING_SPACE.test(shape),
});

function signOf(shape: string, segment: string, before: string): Shape {
  const part = partOf(shape);
  return {
    // Joiners inside a picture of several signs are part of it.
    text: part === null ? segment : shape,
    part,
    isSpace: false,
    mayEndLine: IDEOGRAPH.test(shape) || (HYPHEN.test(shape) && LETTER_OR_DIGIT.test(before)),
  };
}
