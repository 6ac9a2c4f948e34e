import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';

/** Good pieces of one blank that jobs are made on; spares are not among them. */
export interface BlanksNeeded {
  readonly blankId: string;
  /** Null where the blank is not here. */
  readonly blank: Pick<Blank, 'name' | 'suppliedBy'> | null;
  readonly pieces: number;
  /** Sizes of which any are needed, in the order of the blank. */
  readonly sizes: readonly { readonly size: string; readonly pieces: number }[];
}

/** @returns what jobs need of each blank, in the order in which they name them; nothing of what has no pieces. */
export function blanksNeeded(
  jobs: readonly Pick<Job, 'lines'>[],
  blanks: Readonly<Record<string, Blank>>,
): readonly BlanksNeeded[] {
  const needed = new Map<string, Map<string, number>>();
  for (const { blankId, quantities } of jobs.flatMap(({ lines }) => lines)) {
    const sizes = needed.get(blankId) ?? new Map<string, number>();
    for (const { size, quantity } of quantities) sizes.set(size, (sizes.get(size) ?? 0) + quantity);
    needed.set(blankId, sizes);
  }
  return [...needed].flatMap(([blankId, of]) => {
    const blank = blanks[blankId] ?? null;
    const own = (blank?.sizes ?? []).map(({ name }) => name);
    // A size that the blank is made in no more may still be ordered.
    const sizes = [...new Set([...own, ...of.keys()])].flatMap((size) => {
      const pieces = of.get(size) ?? 0;
      return pieces > 0 ? [{ size, pieces }] : [];
    });
    const pieces = sizes.reduce((sum, one) => sum + one.pieces, 0);
    return pieces === 0 ? [] : [{ blankId, blank, pieces, sizes }];
  });
}
