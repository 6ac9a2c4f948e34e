import { NextLikeIt } from '@/app/_stallBook/NextLikeIt';
import styles from './Evening.module.css';
import type { EveningOnScreen } from './eveningOnScreen';

/** What a closed day leads to: the next one like it. */
export function AfterClose({ on: { workspace, evening, close } }: Readonly<{ on: EveningOnScreen }>) {
  const stallDay = workspace.stallDays[evening.plan.stallDayId];
  if (close === null || stallDay === undefined) return null;
  return (
    <p className={styles.close}>
      <NextLikeIt {...{ workspace, stallDay }} id={evening.plan.stallDayId} />
    </p>
  );
}
