import type { SectionState } from '@/app/_sections/sections';
import type { Formatter } from '@/app/_words/formatter';
import type { RunPlanned } from '@/lib/making/runPlan';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import type { RunAnswer } from '@/lib/making/study/runAnswer';
import type { Run } from '@/shared/schemas/making/run';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { paceWords } from './paceWords';
import { weekdayWords } from './runAnswerWords';
import type { BegunSectionId, RunSectionId } from './runTable';

interface StateOfRun {
  readonly run: Run;
  readonly answer: RunAnswer | null;
  readonly planned: Extract<RunPlanned, { kind: 'planned' }> | null;
  readonly isRefused: boolean;
  readonly pieces: number;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** What the index says of each section of a run. */
export function runStates(state: StateOfRun): Readonly<Record<RunSectionId, SectionState>> {
  const { run, answer, planned, isRefused, pieces, formatter, locale } = state;
  const found = answer?.checks.length ?? 0;
  return {
    made:
      run.works.length === 0
        ? { text: 'no job yet', tone: 'todo', count: 0 }
        : plain(answer === null ? '' : formatter.count(pieces, 'piece')),
    when: isRefused
      ? { text: 'no clock', tone: 'todo', count: 0 }
      : plain(planned === null ? '' : weekdayWords(planned.plan.firstDay, locale)),
    pace: plain(answer?.pace == null ? '' : paceWords(answer.pace, formatter).key),
    checks: found === 0 ? plain(answer === null ? '' : 'nothing') : plain(`${found} to mind`),
    goods: plain(''),
    paper: plain(planned === null ? '' : 'ready'),
  };
}

interface StateOfBegun extends Pick<StateOfRun, 'formatter' | 'locale'> {
  readonly standard: RunStandard;
  readonly jobs: readonly unknown[];
}

/** What the index says of each section of a run that was begun. */
export function begunStates({
  standard,
  jobs,
  formatter,
  locale,
}: StateOfBegun): Readonly<Record<BegunSectionId, SectionState>> {
  const { pieces, lastDay } = frozenPlan(standard);
  return {
    frozen: plain(formatter.count(pieces, 'piece')),
    'frozen-clock': plain(weekdayWords(lastDay, locale)),
    paper: plain(jobs.length === 0 ? '' : 'ready'),
  };
}

// Helpers

const plain = (text: string): SectionState => ({ text, tone: 'plain', count: 0 });
