import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter, TextContext } from '@/app/_words/formatter';
import type { RunFacts } from '@/lib/making/runFacts';
import type { RunJob } from '@/lib/making/runPlan';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Run } from '@/shared/schemas/making/run';
import type { FieldPath } from '@/shared/setIn';
import type { RunFigures } from './useRunFigures';

/** One run as its screen has it. */
export interface RunOnScreen extends RunFigures {
  readonly workspace: ReadyWorkspace;
  readonly id: string;
  readonly run: Run;
  readonly facts: RunFacts;
  readonly today: string;
  /** What of the stock is kept for other work; nothing while nobody knows. */
  readonly kept: RunQuestion['kept'];
  /** Jobs that have sums. */
  readonly jobs: readonly RunJob[];
  readonly formatter: Formatter;
  readonly context: TextContext;
  readonly locale: string;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  readonly change: (label: string, to: (run: Run) => Run, key?: string) => void;
}
