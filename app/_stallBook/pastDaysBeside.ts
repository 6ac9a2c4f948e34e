import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';

/**
 * @param id of the stall day that is planned, which teaches itself nothing
 * @returns what closed stall days teach, the latest first
 */
export const pastDaysBeside = ({ papers }: Pick<ReadyWorkspace, 'papers'>, id: string): readonly PastDay[] =>
  pastDaysOf(papers.stallPlan, papers.dayClose).filter(({ stallDayId }) => stallDayId !== id);
