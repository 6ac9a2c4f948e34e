import { classes } from './classes';
import styles from './FamilyMark.module.css';

/** The families of cost; each has a colour and, for eyes or paper without colour, a pattern. */
export type Family = 'materials' | 'time' | 'running' | 'loss' | 'house';

type FamilyMarkProps = Readonly<{
  family: Family;
  /** 1 is the strongest; the fainter ones tell rows of a family apart. */
  shade?: 1 | 2 | 3;
}>;

/** A small square that stands before a cost row, whose name says the same in words. */
export function FamilyMark({ family, shade = 1 }: FamilyMarkProps) {
  return (
    <svg className={styles.mark} viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      <rect
        className={classes(styles.ground, styles[`${family}${shade}`], styles[family])}
        x="0.75"
        y="0.75"
        width="10.5"
        height="10.5"
        rx="2"
      />
      <path className={styles.pattern} d={patterns[family]} />
    </svg>
  );
}

// Helpers

const patterns: Readonly<Record<Family, string>> = {
  materials: '',
  time: 'M4.25 1.5v9M7.75 1.5v9',
  running: 'M1.5 7.5l6-6M4.5 10.5l6-6',
  loss: 'M2.5 2.5l7 7M9.5 2.5l-7 7',
  house: 'M1.5 4.25h9M1.5 7.75h9',
};
