import { type AskedWorker, askWorker } from '@/app/_workers/askWorker';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';

export type PriceService = AskedWorker<JobInput, JobAnswer>;

/** The worker of the sums: asked between the keys, so that figures follow while somebody types. */
export const startPriceService = (): PriceService => askWorker({ start, pauseMs: 0 });

const start = () => new Worker(new URL('./price.worker.ts', import.meta.url), { type: 'module' });
