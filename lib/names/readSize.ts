import { nearestSize } from './nearestSize';
import { sizeKey, sizeKeyText } from './sizeKey';

/** So many of a size. */
export interface SizeCount {
  readonly size: string;
  readonly pieces: number;
}

/** What a cell says of a size. */
type SizeReading =
  | { readonly state: 'none' }
  /** `isAsWritten`: it stands there as the blank calls it, once; else it was understood, and that is told. */
  | (SizeCount & { readonly state: 'known'; readonly isAsWritten: boolean })
  | { readonly state: 'unknown'; readonly nearest: string | null }
  | { readonly state: 'several'; readonly sizes: readonly SizeCount[] }
  /** “2 XL” is the size 2XL or two of XL; nobody guesses. */
  | { readonly state: 'twoMeanings'; readonly offers: readonly SizeCount[] };

/**
 * Reads a size as people write it.
 *
 * @param sizes the blank's own
 * @example readSize('2 x large', ['M', 'L']) // { state: 'known', size: 'L', pieces: 2, isAsWritten: false }
 */
export function readSize(text: string, sizes: readonly string[]): SizeReading {
  const written = plainText(text);
  return knownSize(written, sizes) ?? { state: 'unknown', nearest: nearestSize(written, sizes) };
}

/** The same without looking for what is near: null where it is none of the blank's. */
export function readKnownSize(
  text: string,
  sizes: readonly string[],
): Exclude<SizeReading, { state: 'unknown' }> | null {
  return knownSize(plainText(text), sizes);
}

// Helpers

/** Longer texts are no sizes, however often they are pasted. */
const LONGEST = 60;

const plainText = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ').trim();

function knownSize(
  written: string,
  sizes: readonly string[],
): Exclude<SizeReading, { state: 'unknown' }> | null {
  if (written === '') return { state: 'none' };
  if (written.length > LONGEST) return null;
  const exact = writtenAlike(written, sizes);
  if (exact !== undefined) return { state: 'known', size: exact, pieces: 1, isAsWritten: true };
  const meanings = meaningsOf(written, sizes);
  const [first, ...others] = meanings;
  if (first === undefined) return severalIn(written, sizes);
  return others.length === 0
    ? { state: 'known', ...first, isAsWritten: false }
    : { state: 'twoMeanings', offers: meanings };
}

interface SpelledSize {
  readonly size: string;
  readonly lower: string;
  readonly key: string;
}

/* A list of sizes never changes, and is asked for with every cell. */
const spelled = new WeakMap<readonly string[], readonly SpelledSize[]>();

function spelledSizes(sizes: readonly string[]): readonly SpelledSize[] {
  const known =
    spelled.get(sizes) ??
    sizes.map((size) => ({
      size,
      lower: size.normalize('NFC').toLowerCase(),
      key: sizeKeyText(size),
    }));
  spelled.set(sizes, known);
  return known;
}

function writtenAlike(text: string, sizes: readonly string[]): string | undefined {
  const lower = text.toLowerCase();
  return sizes.find((size) => size === text) ?? spelledSizes(sizes).find((one) => one.lower === lower)?.size;
}

function named(text: string, sizes: readonly string[]): readonly string[] {
  const alike = writtenAlike(text, sizes);
  if (alike !== undefined) return [alike];
  const key = sizeKeyText(text);
  return spelledSizes(sizes).flatMap((one) => (one.key === key ? [one.size] : []));
}

/** A count that nothing else can be meant by: “2 × L”, “2 x L”, “2 of L”, “L (2)”, “L x 2”, “L: 2”. */
const COUNT_FIRST = [
  /^(?<pieces>\d{1,4}) ?[×✕*] ?(?<size>.+)$/u,
  /^(?<pieces>\d{1,4}) ?x (?<size>.+)$/iu,
  /^(?<pieces>\d{1,4}) of (?<size>.+)$/iu,
  /^(?<size>.+?) ?[×✕*] ?(?<pieces>\d{1,4})$/u,
  /^(?<size>.+?) x ?(?<pieces>\d{1,4})$/iu,
  /^(?<size>.+?) ?\( ?[x×]? ?(?<pieces>\d{1,4}) ?\)$/iu,
  /^(?<size>.+?) ?[:=] ?(?<pieces>\d{1,4})$/u,
];

function meaningsOf(written: string, sizes: readonly string[]): readonly SizeCount[] {
  for (const pattern of /\d/.test(written) ? COUNT_FIRST : []) {
    const { size = '', pieces = '' } = pattern.exec(written)?.groups ?? {};
    const counted = Number(pieces) > 0 ? named(size, sizes) : [];
    if (counted.length > 0) return counted.map((one) => ({ size: one, pieces: Number(pieces) }));
  }
  const whole = named(written, sizes);
  const [, figure = '', gap, rest = ''] = /^(\d{1,2})( ?)(\p{L}.*)$/u.exec(written) ?? [];
  // “2XL” of a blank that ends at XL is a size it is not made in, and not two of XL.
  const isCount =
    Number(figure) > 0 && (whole.length > 0 ? gap === ' ' : sizeKey(written).kind !== 'letters');
  const counted = isCount ? named(rest, sizes).map((size) => ({ size, pieces: Number(figure) })) : [];
  // In some shops 2L is 2XL.
  const larger = counted.length > 0 && /^l$/i.test(rest) ? named(`${figure}xl`, sizes) : [];
  const single = [...whole, ...larger].map((size) => ({ size, pieces: 1 }));
  return [...single, ...counted.filter(({ size, pieces }) => pieces > 1 || !whole.includes(size))];
}

/** “M/L”, “S or M”, “2 S, 1 M”; the same size again is so many of it. */
function severalIn(
  written: string,
  sizes: readonly string[],
): Exclude<SizeReading, { state: 'unknown' }> | null {
  const parts = written.split(/ ?[/,;+&|] ?| or | and | - /i).filter((part) => part !== '');
  if (parts.length < 2) return null;
  const counts: SizeCount[] = [];
  for (const part of parts) {
    const alike = writtenAlike(part, sizes);
    const meanings = alike === undefined ? meaningsOf(part, sizes) : [{ size: alike, pieces: 1 }];
    const [only, ...others] = meanings;
    if (only === undefined || others.length > 0) return null;
    counts.push(only);
  }
  const [first] = counts;
  if (first === undefined || counts.some(({ size }) => size !== first.size))
    return { state: 'several', sizes: counts };
  const pieces = counts.reduce((sum, count) => sum + count.pieces, 0);
  return { state: 'known', size: first.size, pieces, isAsWritten: false };
}
