import type { Face, Weight } from './faceTable';
import { CONTROL, lettersOf, setText } from './letters';

/** What the type has not. */
interface MissingLetter {
  readonly letter: string;
  /** As `U+0645`, one after another. */
  readonly codePoints: string;
  /** Letters are drawn as a picture of the device's type; control characters have no shape and are left out. */
  readonly fate: 'picture' | 'leftOut';
}

/** @returns what of some texts the type has not, each once, in the order met: to be told before anything goes out. */
export function missingLetters(texts: Iterable<string>): readonly MissingLetter[] {
  const found = new Map<string, MissingLetter>();
  const add = (letter: string, fate: MissingLetter['fate']) => {
    if (!found.has(letter)) found.set(letter, { letter, codePoints: codePointsOf(letter), fate });
  };
  // Names stand on a paper many times.
  for (const text of new Set(texts)) {
    for (const control of text.replace(/[\t\r\n\u0085]/g, '').match(CONTROL) ?? []) add(control, 'leftOut');
    for (const line of setText(text).split('\n')) {
      for (const letter of lettersOf(line)) if (letter.part === null) add(letter.text, 'picture');
    }
  }
  return [...found.values()];
}

/** A text and how thick it is set. */
interface WeighedText {
  readonly text: string;
  readonly weight: Weight;
}

/** @returns the files of the type that some texts need: nothing else has to be fetched. */
export function neededFaces(texts: Iterable<WeighedText>): readonly Face[] {
  const faces = new Set<Face>();
  for (const { text, weight } of texts) {
    // The dots that shorten a text are Latin.
    faces.add(`latin-${weight}`);
    for (const line of setText(text).split('\n')) {
      for (const { part } of lettersOf(line)) if (part !== null) faces.add(`${part}-${weight}`);
    }
  }
  return [...faces];
}

const codePointsOf = (letter: string): string =>
  [...letter]
    .map((character) => `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`)
    .join(' ');
