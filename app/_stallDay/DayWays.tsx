import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { dayWays } from '@/app/_words/stall/dayWords';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import styles from './DayWays.module.css';

type DayWaysProps = Readonly<{ workspace: Pick<ReadyWorkspace, 'papers' | 'entries'>; id: string }>;

/** From the plan that was fixed on to the count and the evening; nothing before. */
export function DayWays({ workspace: { papers, entries }, id }: DayWaysProps) {
  if (plansOf(papers.stallPlan, id, plansCountedBy(entries.stallTap, papers.dayClose)).counts === null)
    return null;
  return (
    <p className={styles.ways}>
      <ButtonLink kind="strong" href={`/stall/${id}/count`}>
        {dayWays.count}
      </ButtonLink>
      <ButtonLink href={`/stall/${id}/evening`}>{dayWays.evening}</ButtonLink>
    </p>
  );
}
