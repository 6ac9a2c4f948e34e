/** One piece to place, ticks with its gutter. */
export interface Box {
  /** Place of its kind in the list of kinds. */
  readonly kind: number;
  readonly width: number;
  readonly height: number;
}

/** A box where it lies, ticks from the corner of the room; turned, its sides have changed places. */
export interface LaidBox extends Box {
  readonly x: number;
  readonly y: number;
}

/** Equal boxes, ticks with their gutter. */
export interface BoxKind {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/** Counts down the work a search may still do; shared by its parts. */
export interface Work {
  steps: number;
}
