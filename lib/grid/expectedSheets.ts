import { type CostSheet, wholeJob } from './costSheet';

/**
 * Whole sheets a job is expected to use, spoiled ones and tests among them. A begun one is a sheet; the noise of a
 * division is none. Every place that says how many sheets a job takes asks here.
 */
export const expectedSheets = (costs: CostSheet): number => Math.ceil(wholeJob(costs, 'sheets') - 1e-9);
