import { type BreakList, breakList } from '@/lib/price/list/breakList';

/** A price list of pairs “from, each” that can be read. */
export function listOfPairs(pairs: readonly (readonly [number, number])[], currency = 'USD'): BreakList {
  const list = breakList(
    pairs.map(([from, each]) => ({ from, each })),
    currency,
  );
  if (!list.ok) throw new Error(list.problem.kind);
  return list.value;
}

/** 1–5 at 26, 6–11 at 23, 12–23 at 20, 24–47 at 18, 48 and more at 16.50. */
export const exampleList = (): BreakList =>
  listOfPairs([
    [1, 26],
    [6, 23],
    [12, 20],
    [24, 18],
    [48, 16.5],
  ]);
