import { Grid } from '@/lib/grid/evaluateGrid';

let grid: Grid | undefined;

/** One grid a process: its workbooks are built once and refilled for every request. */
export function edgeGrid(): Grid {
  grid ??= new Grid();
  return grid;
}
