/** @returns the things by their key, in the order in which the first of each came */
export function grouped<Of>(
  things: readonly Of[],
  keyOf: (thing: Of) => string,
): ReadonlyMap<string, readonly Of[]> {
  const groups = new Map<string, Of[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}
