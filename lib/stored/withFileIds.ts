/** The same JSON value in which files are named otherwise, however deep they are named. */
export function withFileIds(value: unknown, names: ReadonlyMap<string, string>): unknown {
  if (Array.isArray(value)) return value.map((item) => withFileIds(item, names));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      key === 'fileId' && typeof part === 'string' ? (names.get(part) ?? part) : withFileIds(part, names),
    ]),
  );
}
