import { type AskedWorker, askWorker } from '@/app/_workers/askWorker';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { startPriceWorker } from './priceWorker';

export type PriceService = AskedWorker<JobInput, JobAnswer>;

/** The worker of the sums: asked between the keys, so that figures follow while somebody types. */
export const startPriceService = (): PriceService => askWorker({ start: startPriceWorker, pauseMs: 0 });
