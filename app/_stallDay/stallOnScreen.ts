import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { Noted } from '@/app/_stallBook/notedBefore';
import type { StallBefore } from '@/app/_stallBook/useStallBefore';
import type { Formatter } from '@/app/_words/formatter';
import type { BringRange } from '@/lib/stall/plan/bringGrid';
import type { StallAnswer, StallTrouble } from '@/lib/stall/plan/stallPlanned';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { FieldPath } from '@/shared/setIn';

export type StallPlan = Extract<StallAnswer, { kind: 'planned' }>;

/** What the sums say of a stall day. */
export interface StallFigures {
  /** The last plan that could be made; null while there was none. */
  readonly plan: StallPlan | null;
  /** It is of figures before those of now: newer ones are worked out, or cannot be. */
  readonly isOld: boolean;
  /** The figures of now make no plan. */
  readonly isRefused: boolean;
  readonly troubles: readonly StallTrouble[];
  readonly failure: WorkerFailure | null;
}

/** One stall day as its screen has it. */
export interface StallOnScreen extends StallFigures {
  readonly workspace: ReadyWorkspace;
  readonly id: string;
  readonly stallDay: StallDay;
  readonly today: string;
  readonly before: StallBefore;
  readonly formatter: Formatter;
  readonly locale: string;
  /** How amounts are read. */
  readonly reader: { readonly locale: string; readonly currency: string };
  /** An amount in the currency’s own digits, without its name. */
  readonly amount: (money: number) => string;
  /** What is brought, as typed now beside the last advice; empty while there is none. */
  readonly grid: readonly BringRange[];
  /** What the fair that this one is like noted for it; null where it is like none, or that one is not closed. */
  readonly noted: Noted | null;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  /** Opens whatever holds a field, and goes there. */
  readonly show: (fieldId: string) => void;
  readonly change: (label: string, to: (stallDay: StallDay) => StallDay, key?: string) => void;
}
