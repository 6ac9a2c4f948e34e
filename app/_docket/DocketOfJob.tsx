'use client';

import { useJobInput } from '../_documents/useJobInput';
import type { Maker } from '../_documents/useMaker';
import { usePricedJob } from '../_pricing/usePricedJob';
import { DocketSheet } from './DocketSheet';

/** A job that is there, with its answer from the worker. */
export function DocketOfJob({ jobId, maker }: Readonly<{ jobId: string; maker: Maker }>) {
  const input = useJobInput(maker, jobId);
  const priced = usePricedJob(input);
  return input && <DocketSheet jobId={jobId} maker={maker} input={input} priced={priced} />;
}
