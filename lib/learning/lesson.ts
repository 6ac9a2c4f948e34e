import type { LearnedSubject, RateTaken } from '@/shared/schemas/making/learnedEvents';

/** What a place holds, and would hold after taking a lesson over. */
export type LearnedPlace = RateTaken['places'][number];

/** A figure that runs measured, beside the one it was reckoned with. */
export interface Lesson {
  readonly subject: LearnedSubject;
  /** In what `unit` says; of a size mix the largest share that moved. */
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
  readonly runIds: readonly string[];
  /** Empty where no document holds it: it is only watched. */
  readonly places: readonly LearnedPlace[];
}
