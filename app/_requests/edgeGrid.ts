import { BatchLayouts } from '@/lib/costing/batchLayouts';
import { Grid } from '@/lib/grid/evaluateGrid';
import { LayoutSearch } from '@/lib/layout/layoutSearch';

let grid: Grid | undefined;

/** One grid a process: its workbooks are built once and refilled for every request. */
export function edgeGrid(): Grid {
  grid ??= new Grid();
  return grid;
}

/** One memory of layouts a process: a job that is sent again is laid out at once. */
export const edgeLayouts = new LayoutSearch();

/** The same of other batches of a job, for those that are asked for a curve. */
export const edgeBatches = new BatchLayouts();
