import type { CostSheet } from '@/lib/grid/costSheet';

/** Changes with the sizes of a job: opened figures point at cases by their place, which then means another size. */
export const casesKey = (sheet: CostSheet): string =>
  sheet.cases.map(({ lineId, size }) => `${lineId} ${size}`).join(', ');
