import type { ResolvedJob } from '@/lib/job/checkedJob';

/** @returns the share of tax that written prices of a job have inside; 0 where it is added later or there is none. */
export const taxInside = ({ channel }: Pick<ResolvedJob, 'channel'>): number =>
  channel.taxMode === 'inside' ? channel.tax.value : 0;
