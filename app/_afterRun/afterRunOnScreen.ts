import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import type { StandardPaper } from '@/lib/making/runFacts';
import type { RunResult } from '@/lib/variances/runResult';
import type { RunStep } from '@/shared/schemas/making/runEvents';
import type { AfterRunFigures } from './useAfterRun';

/** What every part of the screen after a run has. */
export interface AfterRunOnScreen {
  readonly workspace: ReadyWorkspace;
  readonly figures: AfterRunFigures;
  readonly result: RunResult;
  readonly standard: StandardPaper;
  /** Writes in the currency of the run. */
  readonly formatter: Formatter;
  readonly locale: string;
}

/** @returns the body of a step of the run today */
export const stepBody = (
  { figures: { facts, today }, standard }: Pick<AfterRunOnScreen, 'figures' | 'standard'>,
  step: RunStep['step'],
): RunStep => ({ runId: facts.runId, standardId: standard.id, day: today, step });
