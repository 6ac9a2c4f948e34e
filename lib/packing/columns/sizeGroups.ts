import { at } from '@/lib/packing/at';
import type { BoxKind, LaidBox } from '@/lib/packing/box';

/** Boxes of one size, whosever they are: a pattern does not care which of them lies where. */
export interface SizeGroup extends BoxKind {
  /** Kinds it is made of, each with how many boxes. */
  readonly members: readonly { readonly kind: number; readonly count: number }[];
}

export function sizeGroups(kinds: readonly BoxKind[]): readonly SizeGroup[] {
  const groups = new Map<string, SizeGroup>();
  for (const [kind, { width, height, count, mayTurn }] of kinds.entries()) {
    if (count === 0) continue;
    const key = `${width} ${height} ${mayTurn}`;
    const known = groups.get(key);
    groups.set(key, {
      width,
      height,
      mayTurn,
      count: (known?.count ?? 0) + count,
      members: [...(known?.members ?? []), { kind, count }],
    });
  }
  return [...groups.values()];
}

/** Gives each box its kind again: of kinds of one size all of the first, then all of the next. */
export function handedOut(
  layout: readonly (readonly LaidBox[])[],
  sizes: readonly SizeGroup[],
): readonly (readonly LaidBox[])[] {
  const left = sizes.map(({ members }) =>
    members.flatMap(({ kind, count }) => Array.from({ length: count }, () => kind)).reverse(),
  );
  return layout.map((boxes) =>
    boxes.map((box) => {
      const kind = at(left, box.kind).pop();
      if (kind === undefined) throw new RangeError(`more boxes of size ${box.kind} than asked`);
      return { ...box, kind };
    }),
  );
}
