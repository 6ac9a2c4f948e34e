import type { LaidOut } from '@/lib/job/spareStacks';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** What came of one size of a line. Pieces. */
export interface MadeSize extends LaidOut {
  /** Good out of the last press. */
  readonly good: number;
  /** Set aside at the last press, to be sold for less. */
  readonly seconds: number;
  /** Lost at any press. */
  readonly scrap: number;
  /** That went into the first press. */
  readonly started: number;
  /** Blanks it took: a piece noted at a later press alone was a blank all the same. */
  readonly drawn: number;
}

/**
 * What came of the sizes of a run, by its presses; as at the press, one the standard does not name counts nowhere.
 *
 * @returns null where nobody noted a piece: nothing is known of what came good
 */
export function goodMade(
  { works }: Pick<RunStandard, 'works'>,
  pressings: readonly Pressing[],
): readonly MadeSize[] | null {
  if (pressings.length === 0) return null;
  return works.flatMap(({ jobId, lines }) =>
    lines.flatMap(({ lineId, blankId, isBrought, sizes, placements }) => {
      const named = placements.map(({ placementId }) => placementId);
      const [first, last] = [named[0], named.at(-1)];
      const ofLine = pressings.filter(
        (one) => one.jobId === jobId && one.lineId === lineId && named.includes(one.placementId),
      );
      return sizes.map(({ size, wanted, take }): MadeSize => {
        const own = ofLine.filter((one) => one.size === size);
        const out = own.filter(({ placementId }) => placementId === last);
        return {
          ...{ jobId, lineId, blankId, isBrought, size, wanted, take },
          good: out.filter(({ result }) => result === 'good').length,
          seconds: out.filter(({ result }) => result === 'second').length,
          scrap: own.filter(({ result }) => result === 'scrap').length,
          started: own.filter(({ placementId }) => placementId === first).length,
          drawn: drawnBy(named, own),
        };
      });
    }),
  );
}

// Helpers

/** At least as many as any one press saw, with those that presses before it lost. */
function drawnBy(named: readonly string[], own: readonly Pressing[]): number {
  let [most, lost] = [0, 0];
  for (const placementId of named) {
    const seen = own.filter((one) => one.placementId === placementId);
    most = Math.max(most, lost + seen.length);
    lost += seen.filter(({ result }) => result === 'scrap').length;
  }
  return most;
}
