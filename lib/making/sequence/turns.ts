/** One print of one line, pressed on all its pieces. */
export interface PressTurn {
  readonly jobId: string;
  readonly lineId: string;
  readonly placementId: string;
  readonly name: string;
  /** Place among the prints of its line, from 0. */
  readonly slot: number;
  /** Whether press and recipe stay as they were for the turn before. */
  readonly sameSetting: boolean;
}

/** A size of a run. */
export interface SizeTurn {
  readonly jobId: string;
  readonly lineId: string;
  readonly size: string;
}
