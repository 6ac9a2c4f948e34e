import { isPlainObject } from '@/lib/merging/sameValue';
import { entryOf, type Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import { setIn } from '@/shared/setIn';
import type { CopyScope } from './copy';
import { hashOfJson } from './exchanged';

/** The id under which theirs comes beside mine: made of what it holds, so that it comes once however often it is taken in. */
export const idOfDouble = ({ kind, id, body }: Pick<Stored, 'kind' | 'id' | 'body'>): string =>
  hashOfJson({ kind, id, body }).slice(0, ID_DIGITS);

/** As long as the ids that are drawn at random. */
const ID_DIGITS = 32;
const LONGEST_NAME = 120;

/** @returns a body whose name says where it comes from; one without a name as it is. */
export function namedAsDouble(body: unknown, of: CopyScope): unknown {
  if (!isPlainObject(body) || typeof body.name !== 'string') return body;
  const from = of === 'everything' ? ', from the copy' : ', from the other device';
  return { ...body, name: `${body.name.slice(0, LONGEST_NAME - from.length)}${from}` };
}

/** @returns a body that names the doubles in place of what they were doubled from. */
export function linkedToDoubles(
  kind: string,
  body: unknown,
  { doubles, registry }: { readonly doubles: ReadonlyMap<string, string>; readonly registry: Registry },
): unknown {
  const entry = entryOf(registry, kind);
  if (entry === undefined || doubles.size === 0) return body;
  return entry.linksOf(body).reduce<unknown>((linked, { to, id, path }) => {
    const double = doubles.get(keyOfDouble(to, id));
    return double === undefined ? linked : setIn(linked, path, double);
  }, body);
}

export const keyOfDouble = (kind: string, id: string): string => `${kind} ${id}`;
