import type { Span } from '@/lib/calendar/span';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import type { TimedPart } from './runSessions';

/** A part with its first minute, as the calendar counts them. */
export interface LaidPart extends Span {
  readonly what: 'print' | 'dry' | 'deliver' | TimedPart['what'];
  readonly name: string;
  readonly session: number | null;
  /** Of what is pressed or tested. */
  readonly turn?: NonNullable<ClockPart['turn']>;
}
