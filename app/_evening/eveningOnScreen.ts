import type { OrderForm } from '@/app/_fields/formMemory';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import type { FixedPlan } from '@/lib/stall/car/plansOf';
import type { DayPaper } from '@/lib/stall/closeInForce';
import type { TapsSince } from '@/lib/stall/count/tapsSince';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import type { Evening } from '@/lib/stall/evening/reconcile';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import type { DayClose } from '@/shared/schemas/stallPapers';

/** What every slip of the evening is drawn from. */
export interface EveningOnScreen {
  readonly workspace: ReadyWorkspace;
  readonly fixed: FixedPlan;
  /** Plans of several devices are in force. */
  readonly isOfSeveral: boolean;
  /** Taps of the day that were counted by an earlier plan. */
  readonly tapsBefore: number;
  /** The close that is in force; null while the day is open. */
  readonly close: DayPaper<'dayClose', DayClose> | null;
  /** What became of the taps since it went out; 0 while there is none. */
  readonly tapsSince: TapsSince;
  /** Closed, and closing again would say the same: nothing was typed, tapped or planned since. */
  readonly isAsClosed: boolean;
  readonly evening: Evening;
  readonly answers: EveningAnswers;
  /** The answers come to more than can be reckoned, so the evening is without them. */
  readonly isBeyondReach: boolean;
  readonly say: (answers: Partial<EveningAnswers>) => void;
  /** Under which half-typed figures are remembered. */
  readonly form: OrderForm;
  /** Other days that were closed, in the same currency, the latest first. */
  readonly past: readonly PastDay[];
  readonly today: string;
  readonly locale: string;
  readonly formatter: Formatter;
}
