import type { JobAnswer } from '@/lib/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { type AskedWorker, askWorker } from '../_workers/askWorker';

export type PriceService = AskedWorker<JobInput, JobAnswer>;

/** The worker of the sums: asked between the keys, so that figures follow while somebody types. */
export const startPriceService = (): PriceService => askWorker({ start, pauseMs: 0 });

const start = () => new Worker(new URL('./price.worker.ts', import.meta.url), { type: 'module' });
