import type { StartPress } from '@/lib/examples/startChoices';
import styles from './Drawing.module.css';

/** A press seen from above, or from its side where it wraps. */
export function PressDrawing({ press }: Readonly<{ press: StartPress }>) {
  return (
    <svg className={styles.drawing} viewBox="0 0 80 56" aria-hidden="true" focusable="false">
      {shapes[press]}
    </svg>
  );
}

const shapes: Readonly<Record<StartPress, React.ReactNode>> = {
  flat: (
    <>
      <rect className={styles.print} x="22" y="10" width="36" height="36" rx="2" />
      <rect className={styles.outline} x="22" y="10" width="36" height="36" rx="2" />
      <path className={styles.grip} d="M31 28H49" />
    </>
  ),
  large: (
    <>
      <rect className={styles.print} x="14" y="6" width="52" height="44" rx="2" />
      <rect className={styles.outline} x="14" y="6" width="52" height="44" rx="2" />
      <path className={styles.grip} d="M30 28H50" />
    </>
  ),
  other: <rect className={styles.dashed} x="20" y="10" width="40" height="36" rx="2" />,
  mug: (
    <>
      <path className={styles.print} d="M22 46V26A18 18 0 0 1 58 26V46H50V26A10 10 0 0 0 30 26V46Z" />
      <path className={styles.body} d="M33 24H47V46H33Z" />
      <path className={styles.grip} d="M18 50H62" />
    </>
  ),
  tumbler: (
    <>
      <path className={styles.print} d="M24 46V16A16 12 0 0 1 56 16V46H49V18H31V46Z" />
      <path className={styles.body} d="M33 12H47L45 46H35Z" />
      <path className={styles.grip} d="M18 50H62" />
    </>
  ),
  oven: (
    <>
      <rect className={styles.outline} x="14" y="8" width="52" height="40" rx="3" />
      <rect className={styles.print} x="20" y="14" width="30" height="28" />
      <circle className={styles.outline} cx="58" cy="18" r="3" />
      <circle className={styles.outline} cx="58" cy="30" r="3" />
    </>
  ),
};
