import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { MadeSize } from './goodMade';

/** How far a run is. Pieces. */
interface StillToPress {
  readonly wanted: number;
  readonly good: number;
  /** Wanted and not good yet; more of one size do not make up for fewer of another. */
  readonly toPress: number;
}

/** @param made null where nobody noted a piece */
export function stillToPress(
  { works }: Pick<RunStandard, 'works'>,
  made: readonly MadeSize[] | null,
): StillToPress {
  const sizes =
    made ??
    works.flatMap(({ lines }) =>
      lines.flatMap((line) => line.sizes.map(({ wanted }) => ({ wanted, good: 0 }))),
    );
  return {
    wanted: sizes.reduce((sum, { wanted }) => sum + wanted, 0),
    good: sizes.reduce((sum, { good }) => sum + good, 0),
    toPress: sizes.reduce((sum, { wanted, good }) => sum + Math.max(0, wanted - good), 0),
  };
}
