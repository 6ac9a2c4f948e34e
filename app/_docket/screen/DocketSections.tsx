'use client';

import { Card } from '@/app/_controls/Card';
import { RevealContext } from '@/app/_controls/reveal';
import { ChecksSection } from '@/app/_docket/checks/ChecksSection';
import { FigureNamesContext } from '@/app/_docket/common/figureNamesContext';
import { JobFieldsContext } from '@/app/_docket/common/jobFields';
import { JobHead } from '@/app/_docket/head/JobHead';
import { JobPriceBar } from '@/app/_docket/head/JobPriceBar';
import { JobSection } from '@/app/_docket/job/JobSection';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { PricedJob, PricedJobState } from '@/app/_pricing/usePricedJob';
import { ShowSetting } from '@/app/_trace/showSetting';
import type { JobInput } from '@/shared/schemas/request';
import { DocketFailure } from './DocketFailure';
import { LazyFigureSections } from './LazyFigureSections';
import { useFigures } from './useFigures';
import { useNewJobFields } from './useNewJobFields';
import { useReveal } from './useReveal';
import { useSettingShower } from './useSettingShower';

type DocketSectionsProps = Readonly<{
  jobId: string;
  workspace: Workspace;
  input: JobInput;
  priced: PricedJobState;
}>;

const noFindings = [] as const;

/** The docket of a job: its head, the price in sight, and the sections on one slip. */
export function DocketSections({ jobId, workspace, input, priced }: DocketSectionsProps) {
  const { answer, lastCosted, lastPriced, failure } = priced;
  const findings = answer?.findings ?? noFindings;
  const fields = useNewJobFields(jobId, input, workspace, findings);
  const { reveal, show } = useReveal();
  const shower = useSettingShower(input.job, show);
  const part = (made: PricedJob | null, stale: boolean) => ({
    jobId,
    input,
    findings,
    answer: made?.answer ?? null,
    madeOf: made?.input ?? input,
    stale,
  });
  const costs = part(lastCosted, answer?.costSheet === null);
  const figures = useFigures(lastCosted);
  const stalePrices = answer !== null && answer.prices === null;
  const prices = part(lastPriced, stalePrices);
  return (
    <JobFieldsContext value={fields}>
      <RevealContext value={reveal}>
        <ShowSetting value={shower}>
          <JobHead findings={answer?.findings ?? null} />
          {failure !== null && <DocketFailure why={failure} />}
          <JobPriceBar priced={lastPriced} stale={stalePrices} />
          <Card>
            <FigureNamesContext value={figures}>
              <JobSection />
            </FigureNamesContext>
            {/* Not before the first answer: they would push each other about while they fill. */}
            {answer !== null && <ChecksSection findings={answer.findings} onShow={show} />}
            <LazyFigureSections parts={answer === null ? null : { costs, prices }} />
          </Card>
        </ShowSetting>
      </RevealContext>
    </JobFieldsContext>
  );
}
