import type { Change, Facts } from '@/shared/finding';

export type LeverId =
  | 'smallerPrint'
  | 'fillSpot'
  | 'pressOrder'
  | 'onePlacementLess'
  | 'cheaperBlank'
  | 'fewerMinutes'
  | 'lessScrap'
  | 'nextPrice'
  | 'otherSheet'
  | 'shareSession'
  | 'gangReplacements';

/** A single change of a job that may leave more of it. */
export interface LeverDraft {
  readonly id: LeverId;
  /** The numbers and names its sentence needs. */
  readonly facts: Facts;
  /** What one tap writes. */
  readonly changes: readonly Change[];
}

/** What of a job a lever moves. Money in currency units without tax, unrounded. */
export interface JobFigures {
  readonly pieces: number;
  readonly fullCostEach: number;
  /** Price for the target margin. */
  readonly targetEach: number;
  readonly profit: number;
  readonly margin: number;
  readonly payPerHour: number;
}

/** A change with what it was seen to do: the changed job went through the same check and the same grid. */
export interface Lever extends LeverDraft {
  readonly after: JobFigures;
  /** After less before; margin as a share of the price (0.01 is a point). */
  readonly gain: {
    readonly margin: number;
    readonly payPerHour: number;
    readonly profit: number;
    /** What a piece costs less. */
    readonly savingEach: number;
  };
}
