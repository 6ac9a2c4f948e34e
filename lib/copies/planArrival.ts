import type { Registry } from '@/lib/stored/registry';
import type { ArrivalPlan, Here } from './arrival';
import type { Copy } from './copy';

export declare function planArrival(here: Here, copy: Copy, registry: Registry): ArrivalPlan;
