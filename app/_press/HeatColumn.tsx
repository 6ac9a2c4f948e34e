import styles from './Dwell.module.css';

/** How far the heat has risen: cold below, hot above; what it shows is told in words beside it. */
export const HeatColumn = ({ share }: Readonly<{ share: number }>) => (
  <svg className={styles.column} viewBox="0 0 10 100" preserveAspectRatio="none" aria-hidden="true">
    <defs>
      <linearGradient id="heat-of-the-press" x1="0" x2="0" y1="1" y2="0">
        <stop className={styles.cold} offset="0" />
        <stop className={styles.tepid} offset="0.5" />
        <stop className={styles.warm} offset="0.75" />
        <stop className={styles.hot} offset="1" />
      </linearGradient>
      <clipPath id="risen-heat">
        <rect x="0" y={100 - share * 100} width="10" height={share * 100} />
      </clipPath>
    </defs>
    <rect x="0" y="0" width="10" height="100" fill="url(#heat-of-the-press)" clipPath="url(#risen-heat)" />
    <rect className={styles.level} x="0" y={Math.min(99, 100 - share * 100)} width="10" height="1" />
    {[20, 40, 60, 80].map((tick) => (
      <rect key={tick} className={styles.level} x="9" y={tick} width="1" height="0.5" />
    ))}
  </svg>
);
