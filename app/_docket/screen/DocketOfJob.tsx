'use client';

import { useJobInput } from '@/app/_documents/useJobInput';
import type { Maker } from '@/app/_documents/useWorkspace';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { DocketSheet } from './DocketSections';

/** A job that is there, with its answer from the worker. */
export function DocketOfJob({ jobId, maker }: Readonly<{ jobId: string; maker: Maker }>) {
  const input = useJobInput(maker, jobId);
  const priced = usePricedJob(input);
  return input && <DocketSheet jobId={jobId} maker={maker} input={input} priced={priced} />;
}
