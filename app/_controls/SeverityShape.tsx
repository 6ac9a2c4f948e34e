import { classes } from './classes';
import styles from './SeverityShape.module.css';

export type Severity = 'stop' | 'caution' | 'note';

/** The outline that tells how grave a finding is without its colour: octagon, triangle or circle. */
export function SeverityShape({ severity }: Readonly<{ severity: Severity }>) {
  return (
    <svg
      className={classes(styles.shape, styles[severity])}
      viewBox="0 0 24 24"
      aria-hidden="true"
      focusable="false"
    >
      <path d={outlines[severity]} />
      <path d={signs[severity]} />
    </svg>
  );
}

// Helpers

const outlines: Readonly<Record<Severity, string>> = {
  stop: 'M8.3 2.500h7.400l5.3 5.300v7.400l-5.3 5.300H8.300L3 15.200V7.800z',
  caution: 'M12 3.2 21.8 20.300H2.200z',
  note: 'M12 2.800a9.2 9.2 0 1 0 .01 0z',
};

const signs: Readonly<Record<Severity, string>> = {
  stop: 'M7.5 11.500h9',
  caution: 'M12 9.500v5M12 17.300v.2',
  note: 'M12 11v5.500M12 7.500v.2',
};
