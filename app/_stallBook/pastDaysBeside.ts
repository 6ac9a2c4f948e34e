import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { PastDay } from '@/lib/stall/evening/pastDay';

/**
 * @param id of the stall day that is planned, which teaches itself nothing
 * @returns what closed stall days teach: none before the evening's close can be read
 */
export const pastDaysBeside = (_: Pick<ReadyWorkspace, 'papers'>, id: string): readonly PastDay[] =>
  [].filter(({ stallDayId }: PastDay) => stallDayId !== id);
