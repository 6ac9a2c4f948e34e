import { Grid } from '@/lib/grid/evaluateGrid';
import { priceJob } from '@/lib/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { answerQuestions } from '../_workers/answerQuestions';

/* The sums run here, off the page's thread. Only the newest question matters; the page drops older replies. */
const grid = new Grid();

answerQuestions((input: JobInput) => priceJob(input, grid));
