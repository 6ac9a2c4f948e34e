'use client';

import { type ReactNode, useMemo } from 'react';
import { RevealContext } from '@/app/_controls/reveal';
import { JobContext, type OpenJob, type ShownAnswer } from '@/app/_docket/common/useJob';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { PricedJob, PricedJobState } from '@/app/_pricing/usePricedJob';
import { useReveal } from '@/app/_sections/useReveal';
import type { FigureNames } from '@/app/_trace/figureName';
import { ShowSetting } from '@/app/_trace/showSetting';
import { splitFindings } from '@/lib/check/questions/splitFindings';
import type { JobInput } from '@/shared/schemas/request';
import { jobFields } from './jobFields';
import { settingShower } from './settingShower';
import { useJobWorkspace } from './useJobWorkspace';

type JobProviderProps = Readonly<{
  jobId: string;
  workspace: Workspace;
  input: JobInput;
  priced: PricedJobState;
  children: ReactNode;
}>;

const noFindings = [] as const;

/** Gives every part of a job's screen the job: its documents, its fields, its findings and the answers to show. */
export function JobProvider({ jobId, workspace: whole, input, priced, children }: JobProviderProps) {
  const workspace = useJobWorkspace(whole);
  const context = useTextContext();
  const { reveal, show } = useReveal('job-');
  const { answer, lastCosted, lastPriced, failure } = priced;
  const found = answer?.findings ?? noFindings;
  const { risks: findings, questions: asked } = useMemo(() => splitFindings(found, input), [found, input]);
  const fields = useMemo(
    () => jobFields({ jobId, input, workspace, findings }, context),
    [jobId, input, workspace, findings, context],
  );
  const figures = useMemo(() => figuresOf(lastCosted), [lastCosted]);
  const shower = useMemo(() => settingShower(input.job, show), [input.job, show]);
  const job = useMemo<OpenJob>(
    () => ({
      ...fields,
      jobId,
      input,
      workspace,
      isChecked: answer !== null,
      findings,
      asked,
      failure,
      costs: shownAnswer(lastCosted, input, answer?.costSheet === null),
      prices: shownAnswer(lastPriced, input, answer?.prices === null),
      figures,
      show,
    }),
    [
      fields,
      jobId,
      input,
      workspace,
      answer,
      findings,
      asked,
      failure,
      lastCosted,
      lastPriced,
      figures,
      show,
    ],
  );
  return (
    <JobContext value={job}>
      <RevealContext value={reveal}>
        <ShowSetting value={shower}>{children}</ShowSetting>
      </RevealContext>
    </JobContext>
  );
}

// Helpers

const shownAnswer = (made: PricedJob | null, input: JobInput, stale: boolean): ShownAnswer => ({
  answer: made?.answer ?? null,
  madeOf: made?.input ?? input,
  stale,
  shared: made?.shared ?? null,
});

function figuresOf(costed: PricedJob | null): FigureNames | null {
  const sheet = costed?.answer.costSheet ?? null;
  return sheet === null || costed === null ? null : { sheet, input: costed.input };
}
