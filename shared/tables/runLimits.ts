interface RunLimit {
  readonly value: number;
  readonly unit: 'min' | 'h';
  readonly source: string;
}

const memory = 'common practice, from memory';

/** Limits of the check of a run. */
export const runLimits = {
  /** Sheets are touch-dry. */
  dry: { value: 5, unit: 'min', source: memory },
  /** Sheets that are not sealed draw damp from the air. */
  lying: { value: 48, unit: 'h', source: memory },
  /** A mug in the air of a room can be taken in the hand and wrapped. */
  cool: { value: 15, unit: 'min', source: memory },
  /** Glue, paint and vinyl parts beside the print want a day before they are washed. */
  wash: { value: 24, unit: 'h', source: 'common practice' },
} as const satisfies Readonly<Record<string, RunLimit>>;
