import type { ArrivalPlan } from '@/lib/copies/arrival';
import { comingEntries } from '@/lib/copies/comingEntries';
import { type Holdings, holdingsOf } from '@/lib/copies/holdings';

/** @returns how much of each a copy holds, those of its drafts that are of an earlier shape included. */
export const holdingsOfPlan = ({ copy, counts }: Pick<ArrivalPlan, 'copy' | 'counts'>): Holdings => ({
  ...holdingsOf({ ...copy, entries: comingEntries(copy, [], 'replace') }),
  kinds: counts.kinds,
});
