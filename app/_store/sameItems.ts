/** @returns the list of before where the one of now holds the same objects. */
export const sameItems = <Item>(
  before: readonly Item[] | undefined,
  now: readonly Item[],
): readonly Item[] =>
  before?.length === now.length && before.every((item, index) => item === now[index]) ? before : now;
