import styles from './JobTable.module.css';

/** A margin of half the price fills the bar; a loss as large fills the room before its start. */
const FULL = 0.5;
const LOSS_PX = 12;
const GAIN_PX = 50;

/** A margin as a bar from nothing to the right, a loss to the left; the figure stands beside it. */
export function MarginBar({ margin }: Readonly<{ margin: number }>) {
  const length = Math.min(Math.abs(margin) / FULL, 1) * (margin < 0 ? LOSS_PX : GAIN_PX);
  return (
    <svg
      className={styles.bar}
      width="64"
      height="12"
      viewBox="0 0 64 12"
      aria-hidden="true"
      focusable="false"
    >
      <rect
        className={heatOf(margin)}
        x={margin < 0 ? LOSS_PX - length : LOSS_PX}
        y="2.5"
        width={length}
        height="7"
      />
      <path className={styles.zero} d={`M${LOSS_PX} 0V12`} />
    </svg>
  );
}

/** The same order of heat as the price ruler: a loss, little, fair, much. */
function heatOf(margin: number): string | undefined {
  if (margin < 0) return styles.loss;
  if (margin < 0.25) return styles.cool;
  return margin < 0.35 ? styles.warm : styles.hot;
}
