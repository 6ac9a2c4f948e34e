/** @returns a name of a kind that is not taken yet: “Line 3”. */
export function freshName(kind: string, taken: readonly string[]): string {
  for (let number = taken.length + 1; ; number += 1) {
    const name = `${kind} ${number}`;
    if (!taken.includes(name)) return name;
  }
}
