import type { CostedJob } from '@/lib/grid/costJob';
import type { MoreHeatings } from '@/lib/making/runPlan';

/** What one more heating-up takes, by the sums that price the job. */
interface OneHeating {
  readonly minutes: number;
  readonly inkMl: number;
  /** Currency units. */
  readonly inkCost: number;
  readonly power: number;
  readonly reprints: number;
  readonly pay: number;
  readonly overhead: number;
}

/** @returns one more session of a job: set-up, clean-down, ink lost to cleaning, warm-up, and what is held for reprints of it */
export function oneHeating({ sheet }: CostedJob): OneHeating {
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const shared = (row: string) => sheet.jobValues[row] ?? 0;
  const minutes = (given('setUpMinutes') + given('cleanDownMinutes')) * shared('restFactor');
  const inkCost = given('sessionInk') * given('inkPrice');
  return {
    minutes,
    inkMl: given('sessionInk'),
    inkCost,
    power: shared('warmUpKwh') * given('tariff'),
    reprints: inkCost * given('reprintShare'),
    pay: (minutes / 60) * given('wage'),
    overhead: (minutes / 60) * shared('overheadRate'),
  };
}

/** @returns so many heatings-up more, each as the job that asks most has it */
export function moreHeatings(jobs: readonly CostedJob[], heatings: number): MoreHeatings {
  const ones = jobs.map(oneHeating).map((one) => ({
    ...one,
    cost: one.inkCost + one.power + one.reprints + one.pay + one.overhead,
  }));
  const most = ones.reduce((best, one) => (one.cost > best.cost ? one : best));
  return {
    heatings,
    minutes: heatings * most.minutes,
    inkMl: heatings * most.inkMl,
    inkCost: heatings * most.inkCost,
    cost: heatings * most.cost,
  };
}
