import styles from './Supply.module.css';

/** Beside the button that was pressed: why nothing was kept. */
export const NotTaken = ({ problem }: Readonly<{ problem: string | null }>) =>
  problem === null ? null : (
    <p role="alert" className={styles.caution}>
      {problem}
    </p>
  );
