'use client';

import type { JobInput } from '@/shared/schemas/request';
import type { Maker } from '../_documents/useMaker';
import { Docket as Slip } from '../_figures/Docket';
import type { PricedJob, PricedJobState } from '../_pricing/usePricedJob';
import { ShowSetting } from '../_trace/showSetting';
import { ChecksSection } from './ChecksSection';
import { CostsOnDesk } from './costsOnDesk';
import { DocketFailure } from './DocketFailure';
import { DocketFiguresLater } from './DocketFiguresLater';
import { JobHead } from './JobHead';
import { JobSection } from './JobSection';
import { JobDeskContext } from './jobDesk';
import { PricePlateOfJob } from './PricePlateOfJob';
import { RevealContext } from './reveal';
import { useDesk } from './useDesk';
import { useFigures } from './useFigures';
import { useReveal } from './useReveal';
import { useSettingShower } from './useSettingShower';

type DocketSheetProps = Readonly<{
  jobId: string;
  maker: Maker;
  input: JobInput;
  priced: PricedJobState;
}>;

const noFindings = [] as const;

/** The docket of a job: its head, the price in sight, and the sections on one slip. */
export function DocketSheet({ jobId, maker, input, priced }: DocketSheetProps) {
  const { answer, lastCosted, lastPriced, failure } = priced;
  const findings = answer?.findings ?? noFindings;
  const desk = useDesk(jobId, input, maker, findings);
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
    <JobDeskContext value={desk}>
      <RevealContext value={reveal}>
        <ShowSetting value={shower}>
          <JobHead findings={answer?.findings ?? null} />
          {failure !== null && <DocketFailure failure={failure} />}
          <PricePlateOfJob priced={lastPriced} stale={stalePrices} />
          <Slip>
            <CostsOnDesk value={figures}>
              <JobSection />
            </CostsOnDesk>
            {/* Not before the first answer: they would push each other about while they fill. */}
            {answer !== null && <ChecksSection findings={answer.findings} onShow={show} />}
            <DocketFiguresLater parts={answer === null ? null : { costs, prices }} />
          </Slip>
        </ShowSetting>
      </RevealContext>
    </JobDeskContext>
  );
}
