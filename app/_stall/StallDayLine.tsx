import Link from 'next/link';
import { classes } from '@/app/_controls/classes';
import { stageWords, stallDaysWords, stallDueWords } from '@/app/_words/stall/stallListWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { duesOf } from '@/lib/stall/days/duesOf';
import type { StallDayRow } from '@/lib/stall/days/stallCalendar';
import styles from './Stall.module.css';

type StallDayLineProps = Readonly<{ row: StallDayRow; today: string; locale: string }>;

/** One stall day of the calendar: which, when and where, and what is due next for it. */
export function StallDayLine({ row: { id, stallDay }, today, locale }: StallDayLineProps) {
  const reader = usableLocale(locale);
  const isAhead = stallDay.archivedOn === null && !stallDay.days.some(({ day }) => day < today);
  const [due, ...more] = isAhead ? duesOf(stallDay) : [];
  const told = due === undefined ? null : stallDueWords(due, today, reader);
  return (
    <li className={styles.line}>
      <div>
        <h3 className={styles.name}>
          <Link href={`/stall/${id}`}>
            <bdi>{stallDay.name}</bdi>
          </Link>
        </h3>
        <p className={styles.quiet}>
          {stallDaysWords(stallDay, today, reader)}
          {stallDay.place !== '' && (
            <>
              , <bdi>{stallDay.place}</bdi>
            </>
          )}
        </p>
      </div>
      <div className={styles.state}>
        <p className={styles.stage}>{stageWords[stallDay.stage]}</p>
        {told !== null && (
          <p className={classes(styles.due, told.isLate && styles.late)}>
            {told.words}
            {more.length > 0 && <span className={styles.quiet}> and {more.length} more</span>}
          </p>
        )}
      </div>
    </li>
  );
}
