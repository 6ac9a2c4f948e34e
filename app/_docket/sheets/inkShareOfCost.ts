import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';

/** @returns what ink costs in the whole job, nothing spoiled, and its share of full cost, 0 to 1. */
export function inkShareOfCost(sheet: CostSheet): { readonly cost: number; readonly share: number } {
  const cost = wholeJob(sheet, 'ink');
  return { cost, share: sheet.fullCost > 0 ? cost / sheet.fullCost : 0 };
}
