import type { Change } from '@/shared/finding';

/** Everything that is asked once: of the workshop, of a blank, of the recipes of a job. */
export type QuestionId =
  | 'ventilated'
  | 'ownCircuit'
  | 'intoWall'
  | 'printedSide'
  | 'sewnLabel'
  | 'safetySheets'
  | 'humidity'
  | 'forChildren'
  | 'lintRoll'
  | 'tapeEdges'
  | 'coolInPlace'
  | 'evenCooling';

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
