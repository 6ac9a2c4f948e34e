import { classes } from '@/app/_controls/classes';
import { dayFormat } from '@/app/_words/dayFormat';
import { benchDayWords } from '@/app/_words/orders/bench/orderBenchWords';
import { type BenchDay, fewerDays } from '@/lib/calendar/benchDays';
import styles from './Bench.module.css';

type BenchDaysProps = Readonly<{ days: readonly BenchDay[]; today: string; locale: string }>;

const HIGH = 100;
/** More do not fit side by side there. */
const MOST_ON_PHONE = 9;

/** Days at the bench: free time dashed, other orders grey, this order filled, the day to keep marked. */
export function BenchDays({ days, today, locale }: BenchDaysProps) {
  const most = Math.max(1, ...days.map(({ free, own, others }) => Math.max(free, own + others)));
  const high = (minutes: number) => (minutes / most) * (HIGH - 2);
  const onPhone = new Set(fewerDays(days, MOST_ON_PHONE));
  return (
    <>
      <p className={styles.key}>hours free: dashed; other orders: grey; this order: filled</p>
      <ol className={styles.days}>
        {days.map((one) => {
          const { day, free, own, others, isWanted } = one;
          const moment = new Date(`${day}T00:00:00Z`);
          return (
            <li key={day} className={classes(styles.day, !onPhone.has(one) && styles.wideOnly)}>
              <span className="visuallyHidden">{benchDayWords(one, today, locale)}</span>
              <span className={styles.wanted} aria-hidden="true">
                {isWanted ? 'due' : ''}
              </span>
              <svg viewBox={`0 0 40 ${HIGH}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
                <rect
                  className={styles.others}
                  x="2"
                  width="36"
                  y={HIGH - 1 - high(others)}
                  height={high(others)}
                />
                <rect
                  className={styles.own}
                  x="2"
                  width="36"
                  y={HIGH - 1 - high(others) - high(own)}
                  height={high(own)}
                />
                <rect
                  className={styles.free}
                  x="2"
                  width="36"
                  y={HIGH - 1 - high(free)}
                  height={high(free)}
                />
              </svg>
              <span aria-hidden="true">{dayFormat(locale, { weekday: 'short' }).format(moment)}</span>
              <span aria-hidden="true">{moment.getUTCDate()}</span>
            </li>
          );
        })}
      </ol>
    </>
  );
}
