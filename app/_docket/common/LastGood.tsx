import styles from './LastGood.module.css';

/** Marks figures that a stop has overtaken. */
export function LastGood() {
  return (
    <p className={styles.mark}>
      <strong>Last good figures.</strong> They are from before the stop under “Checks”.
    </p>
  );
}
