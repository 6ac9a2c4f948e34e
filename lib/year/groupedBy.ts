/** @returns what shares a name together, in the order in which names and members first came. */
export function groupedBy<Of>(
  all: readonly Of[],
  nameOf: (one: Of) => string,
): ReadonlyMap<string, readonly Of[]> {
  const groups = new Map<string, Of[]>();
  for (const one of all) {
    const group = groups.get(nameOf(one));
    if (group === undefined) groups.set(nameOf(one), [one]);
    else group.push(one);
  }
  return groups;
}
