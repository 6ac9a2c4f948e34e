import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import type { PressedRun } from '@/lib/pressing/foldPressings';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** A run that was begun, as its screen has it: by what was frozen, and what was pressed since. */
export interface BegunOnScreen extends RunOnScreen {
  readonly standard: RunStandard;
  readonly pressed: PressedRun;
}
