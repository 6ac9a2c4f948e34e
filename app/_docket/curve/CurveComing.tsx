import styles from './CurveView.module.css';

/** As large as the curve, its figures and the folds under it, until the first is worked out. */
export function CurveComing() {
  return (
    <>
      <div className={styles.whole} aria-busy="true">
        <p className={styles.coming}>The curve is being worked out.</p>
        <div className={styles.comingFigures} />
      </div>
      <div className={styles.comingFolds} />
    </>
  );
}
