import { fieldWords } from '@/app/_words/fieldWords';
import type { Formatter, NameOf } from '@/app/_words/formatter';
import type { DraftDifference } from '@/lib/copies/draftDifferences';
import { placeInBody } from '@/lib/merging/placeInBody';
import { isPlainObject } from '@/lib/merging/sameValue';
import { kindWords } from './storedWords';

/** A difference as it is read: where, what is here, what the copy has. */
interface DifferenceInWords {
  readonly place: string;
  readonly mine: string;
  readonly theirs: string;
}

interface Differing {
  readonly kind: string;
  readonly mine: unknown;
  readonly theirs: unknown;
}

/** @returns a difference between two bodies in words. */
export function differenceWords(
  { path, mine, theirs }: DraftDifference,
  of: Differing,
  { formatter, nameOf }: { readonly formatter: Formatter; readonly nameOf: NameOf },
): DifferenceInWords {
  // What was added since is only in one of them, so that the place is looked for where it is.
  const body = mine === undefined ? of.theirs : of.mine;
  const words = fieldWords({ document: of.kind, path: placeInBody(body, path) });
  const key = path.at(-1) ?? '';
  const value = (side: unknown) => valueWords(side, key, { formatter, nameOf });
  // The draft itself stands above it.
  const whole = ` of the ${kindWords(of.kind)}`;
  const place = words.endsWith(whole) ? words.slice(0, -whole.length) : words;
  return { place, mine: value(mine), theirs: value(theirs) };
}

// Helpers

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const LONGEST = 60;
/** A value of a list of choices, such as `notStated`. */
const CHOICE = /^[a-z]+(?:[A-Z][a-z]+)+$/;

function valueWords(
  value: unknown,
  key: string,
  around: { readonly formatter: Formatter; readonly nameOf: NameOf },
): string {
  const { formatter, nameOf } = around;
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return formatter.number(value, 4);
  if (typeof value === 'string') {
    if (key === 'id' || key.endsWith('Id')) {
      const name = nameOf(key.replace(/Id$/, ''), value);
      return name === null ? 'another one' : `“${name}”`;
    }
    if (DAY.test(value)) return formatter.day(value);
    if (CHOICE.test(value)) return value.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
    return value.length > LONGEST ? `“${value.slice(0, LONGEST)}…”` : `“${value}”`;
  }
  if (Array.isArray(value))
    return value.length === 0 ? 'nothing' : formatter.count(value.length, 'entry', 'entries');
  if (!isPlainObject(value)) return 'something else';
  if (Object.hasOwn(value, 'value')) return valueWords(value.value, key, around);
  return typeof value.name === 'string' && value.name !== '' ? `“${value.name}”` : 'something else';
}
