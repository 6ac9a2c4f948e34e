import styles from './EditableTitle.module.css';
import { TitlePencil } from './TitlePencil';

/** A title as it looks, before it can be renamed. */
export function StandingTitle({ value }: Readonly<{ value: string }>) {
  return (
    <span className={`${styles.title} ${styles.still}`}>
      {value}
      <TitlePencil />
    </span>
  );
}
