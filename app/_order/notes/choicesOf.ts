/** @returns what can be chosen, in the order of a table of words. */
export const choicesOf = <Value extends string>(
  words: Readonly<Record<Value, string>>,
): readonly { readonly value: Value; readonly label: string }[] =>
  keysOf(words).map((value) => ({ value, label: words[value] }));

/** A table of words has the keys it names and no others. */
function keysOf<Value extends string>(words: Readonly<Record<Value, string>>): readonly Value[] {
  const keys: Value[] = [];
  for (const key in words) keys.push(key);
  return keys;
}
