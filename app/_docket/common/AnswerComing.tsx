import styles from './AnswerComing.module.css';

/** Keeps the room of an answer line that is being worked out, so that what is under it stands still when it comes. */
export const AnswerComing = () => <span className={styles.room} />;
