import { fieldWords } from '@/app/_words/fieldWords';
import type { Formatter, NameOf } from '@/app/_words/formatter';
import type { DraftDifference } from '@/lib/copies/draftDifferences';
import { placeInBody } from '@/lib/merging/placeInBody';
import { isPlainObject } from '@/lib/merging/sameValue';
import { bearsUnit, differenceValue } from './differenceValue';
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
  const key = path.at(-1) ?? '';
  const value = (side: unknown, whole: unknown) =>
    differenceValue(side, { kind: of.kind, key, unit: unitAt(whole, path), formatter, nameOf });
  return {
    place: placeWords(body, path, { kind: of.kind, nameOf }),
    mine: value(mine, of.mine),
    theirs: value(theirs, of.theirs),
  };
}

// Helpers

function placeWords(
  body: unknown,
  path: DraftDifference['path'],
  { kind, nameOf }: { readonly kind: string; readonly nameOf: NameOf },
): string {
  const way = placeInBody(body, path);
  const itemName = (upTo: readonly (string | number)[]) => {
    const list = upTo.at(-2);
    const name = nameOfItem(partAt(body, upTo), nameOf);
    // An item that is only on one side is named by what stands there.
    if (name === null || typeof list !== 'string' || (upTo.length === way.length && !isOfSize(list)))
      return null;
    const words = namedItems[list];
    return words === undefined ? null : words(name);
  };
  const words = fieldWords({ document: kind, path: way }, nameOf, itemName);
  // The draft itself stands above it.
  const whole = ` of the ${kindWords(kind)}`;
  const place = words.endsWith(whole) ? words.slice(0, -whole.length) : words;
  const told = bearsUnit(path.at(-1) ?? '')
    ? place.replace(/ in (?:mm|kPa|°C|seconds)(?= of |$)/, '')
    : place;
  return told.replace(/“([^”]*)” \(\w+\) of rates$/, '$1').replace(/ of the (?:line|placement)(?= of )/, '');
}

/** An item of a list by its name: “asked price of Fern mug”, “price of size L”. */
const namedItems: Readonly<Record<string, (name: string) => string>> = {
  lines: (name) => `“${name}”`,
  placements: (name) => `placement “${name}”`,
  sizes: (name) => `size ${name}`,
  quantities: (name) => `size ${name}`,
  upCharges: (name) => `up-charge of size ${name}`,
  printers: (name) => `“${name}”`,
  presses: (name) => `“${name}”`,
  sheets: (name) => `“${name}”`,
  packagings: (name) => `“${name}”`,
  channels: (name) => `“${name}”`,
  ownRows: (name) => `own row “${name}”`,
  items: (name) => `“${name}”`,
};

const isOfSize = (list: string): boolean => list === 'quantities' || list === 'upCharges';

function nameOfItem(item: unknown, nameOf: NameOf): string | null {
  if (!isPlainObject(item)) return null;
  const own = [item.name, item.label, item.size].find((name) => typeof name === 'string' && name !== '');
  if (typeof own === 'string') return own;
  return typeof item.jobId === 'string' ? nameOf('job', item.jobId) : null;
}

/** The unit beside a figure that differs by itself. */
function unitAt(body: unknown, path: DraftDifference['path']): string | null {
  const way = placeInBody(body, path);
  const part = way.length === path.length ? partAt(body, way) : undefined;
  return isPlainObject(part) && typeof part.unit === 'string' ? part.unit : null;
}

function partAt(body: unknown, way: readonly (string | number)[]): unknown {
  let part = body;
  for (const step of way) {
    if (typeof step === 'number') part = Array.isArray(part) ? part[step] : undefined;
    else part = isPlainObject(part) ? part[step] : undefined;
  }
  return part;
}
