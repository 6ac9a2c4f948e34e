/**
 * The one text of a JSON value, by the JSON Canonicalization Scheme (RFC 8785): keys in the order of their UTF-16
 * units, no space, numbers as ECMAScript writes them.
 *
 * @param value JSON: no `undefined`, no number that is not finite
 * @throws NotCanonical for what JSON cannot hold, and for half of a surrogate pair
 */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
    return `{${entries.map(([key, part]) => `${canonicalText(key)}:${canonicalText(part)}`).join(',')}}`;
  }
  if (typeof value === 'string' && LONE_SURROGATE.test(value))
    throw new NotCanonical('half of a surrogate pair');
  if (typeof value === 'number' && !Number.isFinite(value)) throw new NotCanonical(String(value));
  const text = JSON.stringify(value);
  if (text === undefined) throw new NotCanonical(typeof value);
  return text;
}

const LONE_SURROGATE = /\p{Surrogate}/u;

class NotCanonical extends Error {
  override readonly name = 'NotCanonical';
  constructor(what: string) {
    super(`JSON cannot hold ${what}`);
  }
}
