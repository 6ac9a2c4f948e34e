import { answerQuestions } from '@/app/_workers/answerQuestions';
import { priceJob } from '@/lib/costing/priceJob';
import { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';

/* The sums run here, off the page's thread. Only the newest question matters; the page drops older replies. */
const grid = new Grid();

answerQuestions((input: JobInput) => priceJob(input, grid));
