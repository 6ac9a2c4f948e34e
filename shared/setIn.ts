export type FieldPath = readonly (string | number)[];

export class NoSuchField extends RangeError {
  override readonly name = 'NoSuchField';
}

/**
 * A copy of a document with one field set; everything off the path is the same object as before.
 *
 * @param body plain data
 * @param path keys and list places from the outside in; the place after the last of a list appends
 * @param value what the field becomes; `undefined` takes an optional field away
 * @throws NoSuchField where the path leads through something that is neither an object nor a list
 */
export function setIn<Body>(body: Body, path: FieldPath, value: unknown): Body {
  // The copy has the shape of the body; what is written into it is judged by the schema of the document.
  return write(body, path, value) as Body;
}

function write(part: unknown, path: FieldPath, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(part)) {
    const place = Number(key);
    if (!Number.isInteger(place) || place < 0 || place > part.length) {
      throw new NoSuchField(`a list of ${part.length} has no place ${key}`);
    }
    return Object.assign([...part], { [place]: write(part[place], rest, value) });
  }
  if (typeof part !== 'object' || part === null)
    throw new NoSuchField(`there is no field ${key} inside ${part}`);
  const before: Readonly<Record<string, unknown>> = { ...part };
  const { [key]: inner, ...others } = before;
  const written = write(inner, rest, value);
  return written === undefined ? others : { ...before, [key]: written };
}
