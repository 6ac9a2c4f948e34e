import { type AskedWorker, askWorker } from '@/app/_workers/askWorker';
import type { JobInput } from '@/shared/schemas/request';
import type { LaidOutAnswer } from './laidOutAnswers';
import { startPriceWorker } from './priceWorker';

export type PriceService = AskedWorker<JobInput, LaidOutAnswer>;

/** The worker of the sums: asked between the keys, so that figures follow while somebody types. */
export const startPriceService = (): PriceService => askWorker({ start: startPriceWorker, pauseMs: 0 });
