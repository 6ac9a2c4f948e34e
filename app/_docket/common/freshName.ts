/**
 * A name of a kind that is not taken yet: “Line 3”.
 *
 * @param from the first number tried
 */
export function freshName(kind: string, taken: readonly string[], from = taken.length + 1): string {
  for (let number = from; ; number += 1) {
    const name = `${kind} ${number}`;
    if (!taken.includes(name)) return name;
  }
}
