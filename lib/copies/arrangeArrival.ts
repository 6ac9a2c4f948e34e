import type { Registry } from '@/lib/stored/registry';
import type { Arrival, ArrivalChoice, ArrivalPlan } from './arrival';

/** The sums of the preview and what is written are one: `goes` tells the loss of a replacement. */
export declare function arrangeArrival(plan: ArrivalPlan, how: ArrivalChoice, registry: Registry): Arrival;
