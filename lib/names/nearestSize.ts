import { type SizeKey, sizeKey } from './sizeKey';

/**
 * The size of the blank that a size it is not made in most likely means: the next one of its kind, the larger of two that
 * are as near; else one that differs by a slip of the keys.
 *
 * @returns null where none is near
 */
export function nearestSize(asWritten: string, sizes: readonly string[]): string | null {
  const key = sizeKey(asWritten);
  const ranked = sizes
    .flatMap((size) => {
      const away = stepsBetween(key, sizeKey(size));
      return away === null ? [] : [{ size, away }];
    })
    .toSorted((one, other) => Math.abs(one.away) - Math.abs(other.away) || other.away - one.away);
  return ranked[0]?.size ?? slipOf(asWritten, sizes);
}

// Helpers

/** @returns how much larger the other is; null where the two are of different kinds. */
function stepsBetween(key: SizeKey, other: SizeKey): number | null {
  if (key.kind === 'letters')
    return other.kind === 'letters' && key.forYouth === other.forYouth ? other.rank - key.rank : null;
  if (key.kind === 'word' || other.kind !== 'number') return null;
  const isOfOneUnit = key.unit === other.unit || key.unit === '' || other.unit === '';
  return isOfOneUnit ? other.rank - key.rank : null;
}

function slipOf(asWritten: string, sizes: readonly string[]): string | null {
  const written = asWritten.normalize('NFKC').trim().toLowerCase();
  // Whole sentences are no size with a slip in it.
  if (written.length > LONGEST) return null;
  const near = sizes
    .map((size) => ({ size, apart: distance(written, size.normalize('NFKC').toLowerCase()) }))
    .filter(({ apart }) => apart <= Math.max(1, Math.floor(written.length / 3)))
    .toSorted((one, other) => one.apart - other.apart);
  return near[0]?.size ?? null;
}

const LONGEST = 30;

/** Letters to add, drop or change (Levenshtein 1966). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (const [at, letter] of [...one].entries()) {
    const next = [at + 1];
    for (const [to, wanted] of [...other].entries())
      next.push(
        Math.min((row[to] ?? 0) + (letter === wanted ? 0 : 1), (row[to + 1] ?? 0) + 1, (next[to] ?? 0) + 1),
      );
    row = next;
  }
  return row[other.length] ?? row.length;
}
