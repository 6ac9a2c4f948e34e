import type { LearnedSubject, RateTaken } from '@/shared/schemas/making/learnedEvents';
import type { PressFault } from '@/shared/tables/faults';

/** What a place holds, and would hold after taking a lesson over. */
export type LearnedPlace = RateTaken['places'][number];

/** A figure that runs measured, beside the one it was reckoned with. */
export interface Lesson {
  readonly subject: LearnedSubject;
  /** In what `unit` says; of a mix of sizes the share that moved most. */
  readonly standard: number;
  readonly measured: number;
  readonly unit: 'share' | 'min' | 'mL' | 'money';
  /** Presses, blanks, sheets, runs, deliveries. */
  readonly observations: number;
  /** Standard deviation of the observations, or of the estimate where it is a share; null of one. */
  readonly spread: number | null;
  /** With 90 % the true share is no more; null of what is no share. */
  readonly upper: number | null;
  /** Seen so many times, of a share. */
  readonly seen: number | null;
  /** Of a mix of sizes: each, with what was asked for; left out of all else. */
  readonly sizes?: readonly {
    readonly size: string;
    readonly standard: number;
    readonly measured: number;
    readonly spread: number;
  }[];
  /** Of scrap: what it is made of, by what the pieces were lost to; null of those that nobody named. */
  readonly faults?: readonly {
    readonly fault: PressFault | null;
    readonly pieces: number;
    /** Part of `measured`: they add up to it. */
    readonly share: number;
  }[];
  readonly runIds: readonly string[];
  /** Empty where no document holds it: it is only watched. */
  readonly places: readonly LearnedPlace[];
}
