'use client';

import type { ReactNode } from 'react';
import { usePlanningMoment } from '@/app/_clock/usePlanningMoment';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { runAsked } from '@/app/_runBook/runAsked';
import { useRunFigures } from '@/app/_runBook/useRunFigures';
import { formatterFor } from '@/app/_words/formatter';
import { runAnswerWords } from '@/app/_words/making/runs/runAnswerWords';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import { usableLocale } from '@/app/_words/usableLocale';
import type { RunFacts } from '@/lib/making/runFacts';
import type { RunWork } from '@/shared/schemas/making/run';
import { RunLine } from './RunLine';

type NextRunProps = Readonly<{
  facts: RunFacts;
  workspace: ReadyWorkspace;
  /** The day to keep for a work. */
  dayOf: (work: RunWork) => string | null;
  state: ReactNode;
}>;

/** The run that comes next, with what its clock says. */
export function NextRun({ facts, workspace, dayOf, state }: NextRunProps) {
  const moment = usePlanningMoment();
  const { planned, pieces, isRefused, failure } = useRunFigures(
    runAsked(workspace, facts, { ...moment, dayOf }),
  );
  const { workshop } = workspace;
  const line =
    planned === null
      ? null
      : runAnswerWords(planned.plan, pieces, formatterFor(workshop), usableLocale(workshop.locale));
  return (
    <RunLine
      {...{ facts, workspace, state }}
      answer={
        isRefused || failure !== null ? (
          runListTable.notPlanned
        ) : line === null ? (
          runListTable.planning
        ) : (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    />
  );
}
