import { answerQuestions } from '@/app/_workers/answerQuestions';
import { BatchLayouts } from '@/lib/costing/batchLayouts';
import { Grid } from '@/lib/grid/evaluateGrid';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import type { JobInput } from '@/shared/schemas/request';
import { laidOutAnswers } from './laidOutAnswers';

/* The sums run here, off the page's thread. Only the newest question matters; the page drops older replies. */
const grid = new Grid();
const memory = { search: new LayoutSearch(), batches: new BatchLayouts() };

answerQuestions((input: JobInput) => laidOutAnswers(input, grid, memory));
