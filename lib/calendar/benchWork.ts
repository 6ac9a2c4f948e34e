/** Work that needs no hot press. */
export type LooseKind = 'desk' | 'print' | 'finish' | 'pack' | 'deliver';

/** It may be split at any minute. */
interface LooseWork {
  readonly what: LooseKind;
  readonly minutes: number;
}

/** One print of all pieces, at the pace of the press: the hands’ minutes and those the press works alone. */
export interface PressRun {
  readonly name: string;
  readonly minutes: number;
}

/** Work at the hot press: it is done in sessions, each with a set-up and a clean-down. */
export interface PressWork {
  /** Good pieces. */
  readonly pieces: number;
  /** How many times the press is heated up by what the job is priced for. */
  readonly sessions: number;
  readonly setUpMinutes: number;
  readonly cleanDownMinutes: number;
  /** A break; 0 where rest is in the minutes already. */
  readonly breakMinutes: number;
  /** Ink lost to cleaning in each session, mL. */
  readonly inkMl: number;
  /** In the order in which they are pressed. */
  readonly runs: readonly PressRun[];
}

/** What a job asks of the bench. Minutes on the clock, nothing overlapped. */
export interface BenchWork {
  readonly before: readonly LooseWork[];
  /** Null where nothing is pressed any more. */
  readonly press: PressWork | null;
  readonly after: readonly LooseWork[];
}
