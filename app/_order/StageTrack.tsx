import { classes } from '@/app/_controls/classes';
import { stageDayWords } from '@/app/_words/orders/waits/orderTrackWords';
import { stageWords } from '@/app/_words/orders/waits/trackWords';
import type { OrderOnScreen } from './orderOnScreen';
import styles from './StageTrack.module.css';

/** The six stretches of an order: those behind warm up, the present one is hot, those ahead are cold and striped. */
export function StageTrack({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { standing, today, locale, formatter } = on;
  const stages = standing.track.map((stage) => ({
    ...stage,
    name: stageWords[stage.stage],
    day: stageDayWords(stage, today, locale, formatter),
  }));
  const at = stages.findIndex(({ place }) => place === 'present');
  const present = stages[at];
  const isAside = standing.side.side !== 'open';
  return (
    <div className={classes(styles.track, isAside && styles.aside)}>
      <ol className={styles.stages} aria-label="How far it is">
        {stages.map(({ stage, place, name, day }, index) => (
          <li
            key={stage}
            className={classes(styles.stage, styles[place])}
            aria-current={place === 'present' ? 'step' : undefined}
          >
            <span className={styles.number} aria-hidden="true">
              {index + 1}
            </span>
            <span className={styles.name}>{name}</span>
            <span className={styles.day}>{day}</span>
          </li>
        ))}
      </ol>
      {present !== undefined && (
        <p className={styles.caption} aria-hidden="true">
          <strong>
            {at + 1} {present.name}
          </strong>
          <span>{present.day}</span>
        </p>
      )}
    </div>
  );
}
