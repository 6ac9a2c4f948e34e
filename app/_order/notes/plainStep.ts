import { placeOf, type StepName } from '@/lib/orders/stepOrder';
import type { NotedStep } from './stepNote';

export type PlainStep = Exclude<
  NotedStep,
  'accepted' | 'approved' | 'revised' | 'lost' | 'change' | 'reprint' | 'reminded'
>;

/** @returns whether a step brings the order on, and so says which version of each picture there was. */
export const isOfVersions = (what: PlainStep): what is PlainStep & StepName => placeOf(what) !== -1;
