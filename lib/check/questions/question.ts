import type { Change } from '@/shared/finding';

/** Everything that is asked once and for all, in the order in which it is asked. */
export const questionIds = [
  // of the workshop
  'ventilated',
  'ownCircuit',
  'intoWall',
  'printedSide',
  'sewnLabel',
  'safetySheets',
  'humidity',
  // of a blank
  'forChildren',
  // of a job's recipes
  'lintRoll',
  'tapeEdges',
  'coolInPlace',
  'evenCooling',
] as const;

export type QuestionId = (typeof questionIds)[number];

/** A thing nobody has told yet, and what each answer writes. */
export interface Question {
  readonly id: QuestionId;
  /** Name of the printer or blank it is about; empty where there is one of it. */
  readonly of: string;
  readonly yes: readonly Change[];
  readonly no: readonly Change[];
  /** What “not sure” writes; null where that is no answer. */
  readonly unsure: readonly Change[] | null;
}
