import styles from './EditableTitle.module.css';

/** Says to the eye that a title can be renamed. */
export const TitlePencil = () => (
  <svg className={styles.pencil} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
    <path d="M2.5 13.5l.8-3.2L10.6 3a1.4 1.4 0 0 1 2 0l.4.4a1.4 1.4 0 0 1 0 2L5.7 12.700z" />
  </svg>
);
