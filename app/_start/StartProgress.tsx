import styles from './Start.module.css';

/** How far the walk is: a bar that warms from cold to hot, and the count in words. */
export function StartProgress({ place, of }: Readonly<{ place: number; of: number }>) {
  return (
    <div className={styles.progress}>
      <p className={styles.quiet}>
        Your own workshop, <strong>{place}</strong> of {of}
      </p>
      <div className={styles.bar} aria-hidden="true">
        {Array.from({ length: of }, (_, index) => (
          <span
            // A bar has nothing but places.
            // biome-ignore lint/suspicious/noArrayIndexKey: as above
            key={index}
            className={index < place ? styles.reached : styles.ahead}
          />
        ))}
      </div>
    </div>
  );
}
