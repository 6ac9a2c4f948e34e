import { lacksRecords } from '@/app/_words/store/copyFileWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';

/** @returns whether a copy was read to its end: else what is here and was not met in it may stand in it all the same. */
export const isReadWhole = ({ copy, here }: Pick<ArrivalPlan, 'copy' | 'here'>): boolean =>
  !lacksRecords(copy.lacks) && !copy.unreadable.some(({ id }) => here.drafts.has(id));
