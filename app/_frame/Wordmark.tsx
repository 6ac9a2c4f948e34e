import styles from './Wordmark.module.css';

/** Our name beside its mark: a sheet that goes from cold to hot over the platen, one corner lifting. */
export function Wordmark() {
  return (
    <span className={styles.wordmark}>
      <svg className={styles.mark} viewBox="0 0 28 25" aria-hidden="true" focusable="false">
        <defs>
          <linearGradient id="wordmark-heat" x1="0" y1="0" x2="1" y2="0.35">
            <stop offset="0" className={styles.cold} />
            <stop offset="0.34" className={styles.cool} />
            <stop offset="0.62" className={styles.warm} />
            <stop offset="1" className={styles.hot} />
          </linearGradient>
        </defs>
        <path
          d="M4 1h14.2L25 7.8V17a1.5 1.5 0 0 1-1.5 1.5H4A1.5 1.5 0 0 1 2.5 17V2.5A1.5 1.5 0 0 1 4 1z"
          fill="url(#wordmark-heat)"
        />
        <path className={styles.corner} d="M18.2 1 25 7.8h-5.3a1.5 1.5 0 0 1-1.5-1.5z" />
        <rect className={styles.platen} x="0.5" y="20.5" width="27" height="3.5" rx="1.75" />
      </svg>
      <span className={styles.name}>Pressminute</span>
    </span>
  );
}
