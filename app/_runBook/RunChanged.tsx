import { Advice } from '@/app/_controls/Advice';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { sinceWords } from '@/app/_words/making/runs/sinceWords';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { useJobsSince } from './useJobsSince';

type RunChangedProps = Readonly<{
  workspace: ReadyWorkspace;
  /** What the run is held against. */
  frozen: RunStandard;
}>;

/** What of its jobs changed since a run began, and that what was frozen stays; nothing where nothing did. */
export const RunChanged = ({ workspace, frozen }: RunChangedProps) =>
  sinceWords(useJobsSince(workspace, frozen)).map((words) => (
    <Advice key={words} severity="caution">
      {words}
    </Advice>
  ));
