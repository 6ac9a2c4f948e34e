import { isPlainObject } from '@/lib/merging/sameValue';
import { checkOf } from './copyText';
import { parsedJson } from './parsedJson';

/** One line of a copy, or one item of its lists. */
export interface CopyRecord {
  readonly nature: RecordNature;
  readonly raw: unknown;
  /** Only with a draft. */
  readonly hashes: unknown;
  /** Whether it agrees with the check it bears. */
  readonly isChecked: boolean;
}

const natures = ['file', 'draft', 'paper', 'entry', 'unreadable'] as const;
type RecordNature = (typeof natures)[number];

/** @returns the record that an object of a copy holds; null for every other object. */
export function recordOf(value: unknown, isChecked: boolean): CopyRecord | null {
  if (!isPlainObject(value)) return null;
  const nature = natures.find((name) => Object.hasOwn(value, name));
  return nature === undefined ? null : { nature, raw: value[nature], hashes: value.hashes, isChecked };
}

/** @returns the object of one line of a copy, and whether its check agrees; null where the line is none. */
export function lineObject(
  line: string,
): { readonly value: Readonly<Record<string, unknown>>; readonly isChecked: boolean } | null {
  const bare = line.trimEnd().replace(/,$/, '');
  if (!bare.startsWith('{"')) return null;
  for (const text of [bare, `${bare}}`]) {
    const value = parsedJson(text);
    // The first line opens the object that all others lie in; of any other the end is lacking.
    if (!isPlainObject(value) || (text !== bare && typeof value.format !== 'string')) continue;
    const check = CHECKED.exec(text);
    return { value, isChecked: check !== null && checkOf(text.slice(check[0].length)) === check[1] };
  }
  return null;
}

const CHECKED = /^\{"check":"([0-9a-f]{8})",/;
