/** Sides of the bins of classes 1 to 10, and the longest side of a piece in classes 1 to 6. */
const BINS = [10, 30, 40, 100, 100, 300, 100, 100, 100, 100];
const LONGEST = [10, 10, 35, 35, 100, 100];

/** Shares of the bin between which width and height of the four types of classes 7 to 10 lie. */
const TYPES = [
  [2 / 3, 1, 0, 1 / 2],
  [0, 1 / 2, 2 / 3, 1],
  [1 / 2, 1, 1 / 2, 1],
  [0, 1 / 2, 0, 1 / 2],
] as const;

/**
 * An instance of the classes of J. Berkey and P. Wang, 1987 (1 to 6), and S. Martello and D. Vigo, 1998 (7 to 10):
 * sides uniform; in classes 7 to 10 seven in ten pieces are of one type, the others of the three other types.
 */
export function drawClass(
  name: number,
  pieces: number,
  random: () => number,
): { readonly side: number; readonly items: readonly (readonly [number, number])[] } {
  const side = BINS[name - 1] ?? 100;
  const whole = (least: number, most: number) => least + Math.floor(random() * (most - least + 1));
  const longest = LONGEST[name - 1];
  const items = Array.from({ length: pieces }, (): readonly [number, number] => {
    if (longest !== undefined) return [whole(1, longest), whole(1, longest)];
    const own = name - 7;
    const type = random() < 0.7 ? own : (own + whole(1, 3)) % 4;
    const [a, b, c, d] = TYPES[type] ?? TYPES[3];
    const length = (from: number, to: number) =>
      whole(Math.max(1, Math.ceil(from * side)), Math.floor(to * side));
    return [length(a, b), length(c, d)];
  });
  return { side, items };
}
