import { classes } from '@/app/_controls/classes';
import styles from './Waits.module.css';
import type { WaitRow } from './waitRows';

type WhoseMarkProps = Readonly<{
  whose: WaitRow['whose'];
  /** The customer, as rows name them. */
  who: string;
}>;

/** Whose it is: a filled mark is the maker’s, a ring with the first letter is somebody else’s. */
export function WhoseMark({ whose, who }: WhoseMarkProps) {
  if (whose === null) return <span className={styles.whose} />;
  const name = whose === 'maker' ? 'You' : whose === 'supplier' ? 'Supplier' : who;
  const letter = whose === 'maker' ? 'I' : ([...name][0] ?? '').toUpperCase();
  return (
    <span className={styles.whose}>
      <span className={classes(styles.mark, whose === 'maker' && styles.own)} aria-hidden="true" title={name}>
        {letter}
      </span>
      <span className="visuallyHidden">{name}: </span>
    </span>
  );
}
