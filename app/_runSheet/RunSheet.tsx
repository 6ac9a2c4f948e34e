'use client';

import { useMemo, useState } from 'react';
import { SheetPaper } from '@/app/_docket/jobSheet/SheetPaper';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { paperOfLocale } from '@/app/_priceLists/paperOfLocale';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { useJobsSince } from '@/app/_runBook/useJobsSince';
import { runTable } from '@/app/_words/making/runs/runTable';
import { runSheetTable } from '@/app/_words/making/sheet/runSheetTable';
import { runSheetFacts } from '@/lib/making/sheet/runSheetFacts';
import type { JobSheetBody } from '@/lib/papers/bodies/jobSheetPaper';
import type { PaperSource } from '@/lib/papers/paperOf';
import { recipesPressed } from '@/lib/pressing/withoutPressed';
import { firstDayOf } from '@/lib/stall/sellingDays';
import { runBody } from './runBody';
import { sheetFindings } from './sheetFindings';

/** The run on paper: what lies beside the press, without a figure of money. */
export function RunSheet({ on }: Readonly<{ on: RunOnScreen }>) {
  const { id, run, jobs, planned, answer, workspace, today, context } = on;
  const frozen = on.facts.standard?.body ?? null;
  const since = useJobsSince(workspace, frozen);
  const plan = planned?.plan ?? null;
  const { workshop, readFile, kinds, stallDays } = workspace;
  const [page, setPage] = useState<JobSheetBody['page']>(
    workshop.papers.page ?? paperOfLocale(workshop.locale),
  );
  const orders = kinds.order.bodies;
  const { pressing } = workspace.entries;
  const { runStandard } = workspace.papers;
  const pressed = useMemo(() => recipesPressed(pressing, runStandard), [pressing, runStandard]);
  const source = useMemo((): PaperSource | null => {
    const of = frozen !== null ? { standard: frozen } : plan === null ? null : { plan, cover: run.cover };
    if (of === null || jobs.length === 0) return null;
    const facts = runSheetFacts(jobs, of);
    const waiting = run.works.flatMap(({ jobId, orderId, stallDayId }) => {
      const order = orderId === null ? undefined : orders[orderId];
      const day = stallDayId === null ? undefined : stallDays[stallDayId];
      const job = workspace.jobs.find(({ id }) => id === jobId)?.job;
      return {
        name: order?.name ?? day?.name ?? null,
        wantedOn: order?.wantedOn ?? (day === undefined ? job?.wantedOn : firstDayOf(day)) ?? null,
      };
    });
    const body = runBody({
      name: frozen?.title ?? run.name,
      facts,
      changed: since.flatMap(({ name, isGone }) => (isGone ? [] : [name])),
      missing:
        frozen?.works.flatMap(({ jobId, name }) =>
          jobs.some(({ work }) => work.jobId === jobId) ? [] : [name],
        ) ?? [],
      findings: sheetFindings({ id, jobs, answer, pressed }, of),
      madeFor: [...new Set(waiting.flatMap(({ name }) => name ?? []))],
      wantedOn: waiting.flatMap(({ wantedOn }) => wantedOn ?? []).toSorted()[0] ?? null,
      ...{ workshop, today, page, context },
    });
    return { kind: 'jobSheet', body };
  }, [
    id,
    frozen,
    since,
    plan,
    jobs,
    run,
    orders,
    stallDays,
    workspace.jobs,
    answer,
    pressed,
    workshop,
    today,
    page,
    context,
  ]);
  if (source === null) return <p>{frozen === null ? runTable.noPaper : runTable.noPaperNow}</p>;
  return (
    <>
      <ChoiceField
        label={runTable.page}
        width="narrow"
        value={page}
        choices={[
          { value: 'a4', label: 'A4' },
          { value: 'letter', label: 'Letter' },
        ]}
        onCommit={setPage}
      />
      <SheetPaper {...runSheetTable.file} {...{ source, readFile }} words={workshop.papers.words} />
    </>
  );
}
