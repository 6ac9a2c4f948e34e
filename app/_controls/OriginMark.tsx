import { classes } from './classes';
import styles from './OriginMark.module.css';

/** Where a value comes from: assumed by the app, set by the maker, or taken from the press log. */
export type Origin = 'typical' | 'yours' | 'measured';

type OriginMarkProps = Readonly<{
  origin: Origin;
  /** How many runs a measured value rests on. */
  count?: number | undefined;
}>;

/** The word *typical*, *yours* or *measured*, colder the less is known. */
export function OriginMark({ origin, count }: OriginMarkProps) {
  return (
    <span className={classes(styles.mark, styles[origin])}>
      <svg className={styles.dot} viewBox="0 0 10 10" aria-hidden="true" focusable="false">
        <circle cx="5" cy="5" r="3.75" />
        {origin === 'measured' && <circle className={styles.core} cx="5" cy="5" r="1.5" />}
      </svg>
      {origin}
      {count !== undefined && ` ${count}×`}
    </span>
  );
}
