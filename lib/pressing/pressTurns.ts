import type { RunStandard, StandardPlacement } from '@/shared/schemas/making/runPapers';

/** One print of one line, pressed on all its pieces. */
export interface PressTurn {
  readonly jobId: string;
  readonly lineId: string;
  readonly placementId: string;
  /** Of job and line where the run has several, and of the print. */
  readonly jobName: string;
  readonly lineName: string;
  readonly blankId: string;
  readonly blankName: string;
  readonly placement: StandardPlacement;
  /** Place among the prints of its line, from 0. */
  readonly slot: number;
  readonly isLast: boolean;
  /** In the order in which they are pressed. */
  readonly sizes: readonly string[];
}

/** What a turn goes by, among those of a run. */
export const turnKey = ({
  jobId,
  lineId,
  placementId,
}: Pick<PressTurn, 'jobId' | 'lineId' | 'placementId'>) => `${jobId} ${lineId} ${placementId}`;

/**
 * The prints of a run in the order in which they are pressed, as the standard froze it: by the parts of its clock; what
 * these do not name follows, the first prints of all lines before the second. Lines, and sizes in them, stand as the sizes
 * of the standard do.
 */
export function pressTurns({
  works,
  sizes,
  clock,
}: Pick<RunStandard, 'works' | 'sizes' | 'clock'>): readonly PressTurn[] {
  const placeOfLine = (jobId: string, lineId: string) => {
    const at = sizes.findIndex((one) => one.jobId === jobId && one.lineId === lineId);
    return at < 0 ? sizes.length : at;
  };
  const turns = works
    .flatMap(({ jobId, name, lines }) =>
      lines.flatMap((line) =>
        line.placements.map(
          (placement, slot): PressTurn => ({
            ...{ jobId, lineId: line.lineId, placementId: placement.placementId },
            ...{ jobName: name, lineName: line.name, blankId: line.blankId, blankName: line.blankName },
            ...{ placement, slot, isLast: slot === line.placements.length - 1 },
            sizes: orderedSizes(
              line.sizes.map(({ size }) => size),
              sizes
                .filter((one) => one.jobId === jobId && one.lineId === line.lineId)
                .map(({ size }) => size),
            ),
          }),
        ),
      ),
    )
    .toSorted(
      (one, other) =>
        one.slot - other.slot || placeOfLine(one.jobId, one.lineId) - placeOfLine(other.jobId, other.lineId),
    );
  return inClockOrder(turns, clock);
}

/** @returns prints in the order in which the clock has each first pressed; what it does not name comes after, as it stands */
export function inClockOrder<Turn extends Parameters<typeof turnKey>[0]>(
  turns: readonly Turn[],
  clock: RunStandard['clock'],
): readonly Turn[] {
  const keys = [
    ...new Set(clock.flatMap(({ what, turn }) => (what === 'press' && turn ? [turnKey(turn)] : []))),
  ];
  const place = (turn: Turn) => {
    const at = keys.indexOf(turnKey(turn));
    return at < 0 ? keys.length : at;
  };
  return turns.toSorted((one, other) => place(one) - place(other));
}

// Helpers

const orderedSizes = (all: readonly string[], first: readonly string[]): readonly string[] => [
  ...new Set([...first.filter((size) => all.includes(size)), ...all]),
];
