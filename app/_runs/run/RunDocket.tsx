'use client';

import { type ReactNode, useMemo, useState } from 'react';
import { usePlanningMoment } from '@/app/_clock/usePlanningMoment';
import { Card } from '@/app/_controls/Card';
import { PageHead } from '@/app/_controls/PageHead';
import { RevealContext } from '@/app/_controls/reveal';
import { usePageName } from '@/app/_controls/usePageName';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { useTextContext } from '@/app/_fields/useTextContext';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { runAsked } from '@/app/_runBook/runAsked';
import { changeRun } from '@/app/_runBook/runEdits';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { useRunFigures } from '@/app/_runBook/useRunFigures';
import { IndexedSections } from '@/app/_sections/IndexedSections';
import { useReveal } from '@/app/_sections/useReveal';
import { formatterFor } from '@/app/_words/formatter';
import { runStates } from '@/app/_words/making/runs/runStates';
import { runSections, runTable } from '@/app/_words/making/runs/runTable';
import { usableLocale } from '@/app/_words/usableLocale';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { wantedDayOf } from '@/lib/making/list/wantedDayOf';
import type { RunFacts } from '@/lib/making/runFacts';
import type { RunJob } from '@/lib/making/runPlan';
import type { MirrorDoubt } from '@/lib/pressing/mirrorDoubts';
import { textLimits } from '@/shared/limits';
import { type RunWork, runSchema } from '@/shared/schemas/making/run';
import { laterBegun } from './laterBegun';
import { laterParts } from './laterParts';
import { RunPlate } from './RunPlate';
import { MadeSection } from './sections/MadeSection';
import { WhenSection } from './sections/WhenSection';

type RunDocketProps = Readonly<{
  workspace: ReadyWorkspace;
  facts: RunFacts;
  /** Of all runs. */
  doubts: readonly MirrorDoubt[];
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A run from top to bottom: planned until it begins, then by what was frozen. */
export function RunDocket({ workspace, facts, doubts, onRemoved }: RunDocketProps) {
  const [kept, setKept] = useState<RunOnScreen['kept']>(NOTHING);
  const on = useRunOnScreen(workspace, facts, kept);
  const { run } = on;
  usePageName(`${run.name} · Pressminute`);
  const { reveal } = useReveal('run-');
  const standard = facts.standard?.body ?? null;
  const note = doubts.length > 0 && (
    <LaterPart
      part={laterParts.mirror}
      what="What came out reversed"
      props={{ workspace, facts, doubts, today: on.today }}
    />
  );
  return (
    <RevealContext value={reveal}>
      <PageHead
        title={
          <EditableTitle
            value={run.name}
            label={runTable.name}
            limits={textLimits(runSchema, ['name'])}
            onCommit={(name) => on.set(runTable.name, ['name'], name)}
          />
        }
      />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <AnswerMissing what="The clock could not be worked out" failure={on.failure} />
      {standard === null ? (
        <>
          <LaterPart
            part={laterParts.kept}
            what="What other work keeps of the stock"
            props={{ workspace, works: run.works, onKept: setKept }}
          />
          <PlannedRun {...{ on, note }} />
        </>
      ) : (
        <LaterPart part={laterBegun} what="The run as it began" props={{ on, standard, note }} />
      )}
      <LaterPart part={laterParts.away} what="Putting the run away" props={{ on, onRemoved }} />
    </RevealContext>
  );
}

// Helpers

const NOTHING: RunOnScreen['kept'] = [];

/** A run that was not begun by a standard: what it comes to, what it asks, and every section of its plan. */
function PlannedRun({ on, note }: Readonly<{ on: RunOnScreen; note: ReactNode }>) {
  const [isSheetOpen, setSheetOpen] = useState(false);
  return (
    <>
      <RunPlate on={on} />
      {note}
      {on.troubles.length > 0 && (
        <LaterPart part={laterParts.troubles} what="What the run asks" props={{ on }} />
      )}
      <IndexedSections
        label="Sections of this run"
        sections={runSections}
        states={runStates(on)}
        isUnderBar={false}
        isSheetOpen={isSheetOpen}
        onSheet={setSheetOpen}
      >
        <Card>
          <MadeSection on={on} numeral={1} />
          <WhenSection on={on} numeral={2} />
          <LaterPart part={laterParts.pace} what="The pace" props={{ on, numeral: 3 }} />
          <LaterPart part={laterParts.checks} what="The checks" props={{ on, numeral: 4 }} />
          <LaterPart part={laterParts.goods} what="Stock and buying" props={{ on, numeral: 5 }} />
          <LaterPart part={laterParts.paper} what="The run sheet" props={{ on, numeral: 6 }} />
        </Card>
      </IndexedSections>
    </>
  );
}

function useRunOnScreen(workspace: ReadyWorkspace, facts: RunFacts, kept: RunOnScreen['kept']): RunOnScreen {
  const moment = usePlanningMoment();
  const { today } = moment;
  const { run, runId: id } = facts;
  const { of: orderOf, jobOf } = useOrderBook(workspace);
  const { workshop, stallDays } = workspace;
  const dayOf = (work: RunWork) =>
    wantedDayOf(work, { orderOf, stallDays, jobOf: (jobId) => jobOf(jobId)?.job });
  const figures = useRunFigures(runAsked(workspace, { ...facts, kept }, { ...moment, dayOf }));
  const context = useTextContext();
  const formatter = useMemo(() => formatterFor(workshop), [workshop]);
  const jobs = useMemo(
    () =>
      figures.answer?.found.flatMap((one): readonly RunJob[] => (one.kind === 'costed' ? [one] : [])) ?? [],
    [figures.answer],
  );
  return {
    ...figures,
    ...{ workspace, id, run, facts, today, kept, jobs, formatter, context },
    locale: usableLocale(workshop.locale),
    set: (label, path, value) => void workspace.setField({ kind: 'run', id }, label, path, value),
    change: (label, to, key) => changeRun(workspace, id, label, to, key),
  };
}
