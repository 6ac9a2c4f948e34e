import type { Where } from '@/shared/finding';
import type { ResolvedJob } from './checkedJob';
import type { UsedRate } from './usedRate';

/** The figures that the price of a job stands on, and where those are typed that are not the maker's own. */
export interface RatesInUse {
  readonly all: number;
  /** Fields of the typical ones, in the order they are looked up. */
  readonly typical: readonly Where[];
}

/**
 * Counts each rate once that some sum of the job needs, and the ink of each picture. Typical is what is missing, and
 * what was taken over as typical.
 */
export function ratesInUse(used: readonly UsedRate[], job: ResolvedJob | null): RatesInUse {
  const needed = used.filter((one) => one.needed);
  const inks = new Map(
    (job?.lines ?? []).flatMap(({ placements }) =>
      placements.map(({ placement, totalCoverage }) => [placement.artworkId, totalCoverage.origin] as const),
    ),
  );
  const guessedInks = [...inks].flatMap(([id, origin]): readonly Where[] =>
    origin === 'typical' ? [{ document: 'artwork', id, path: ['coverage'] }] : [],
  );
  return {
    all: needed.length + inks.size,
    typical: [
      ...needed.filter(({ rate }) => rate === null || rate.origin === 'typical').map(({ where }) => where),
      ...guessedInks,
    ],
  };
}
