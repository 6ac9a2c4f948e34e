import type { Change, Where } from '@/shared/finding';

/** Everything that is asked once: of the workshop, of a blank, of a picture, of a job and its recipes. */
export type QuestionId =
  | 'ventilated'
  | 'ownCircuit'
  | 'intoWall'
  | 'printedSide'
  | 'sewnLabel'
  | 'safetySheets'
  | 'humidity'
  | 'taxInside'
  | 'pictureOwner'
  | 'freight'
  | 'delivery'
  | 'forChildren'
  | 'lintRoll'
  | 'tapeEdges'
  | 'coolInPlace'
  | 'evenCooling';

/** A thing nobody has told yet, and what each answer writes. */
export interface Question {
  readonly id: QuestionId;
  /** Name of the printer, blank or picture it is about; empty where there is one of it. */
  readonly of: string;
  /** What “yes” writes; the field it leads to where only the maker can type the answer. */
  readonly yes: readonly Change[] | Where;
  readonly no: readonly Change[];
  /** What a third answer writes, such as “not sure”; null where there is none. */
  readonly unsure: readonly Change[] | null;
}

/** @returns whether an answer is typed in a field, and not written by its button. */
export const isTyped = (answer: readonly Change[] | Where): answer is Where => 'document' in answer;
