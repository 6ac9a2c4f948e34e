'use client';

import { useJobInput } from '../_documents/useJobInput';
import type { Maker } from '../_documents/useMaker';
import { WithWorkshop } from '../_documents/WithWorkshop';
import { usePricedJob } from '../_pricing/usePricedJob';
import { DocketSheet } from './DocketSheet';
import { JobNotHere } from './JobNotHere';

/** One job from top to bottom, in the order of the work. */
export function Docket({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkshop>
      {(maker) =>
        maker.jobs.some(({ id }) => id === jobId) ? (
          <DocketOfJob key={jobId} jobId={jobId} maker={maker} />
        ) : (
          <JobNotHere jobId={jobId} maker={maker} />
        )
      }
    </WithWorkshop>
  );
}

/** A job that is there, with its answer from the worker. */
function DocketOfJob({ jobId, maker }: Readonly<{ jobId: string; maker: Maker }>) {
  const input = useJobInput(maker, jobId);
  const priced = usePricedJob(input);
  return input && <DocketSheet jobId={jobId} maker={maker} input={input} priced={priced} />;
}
