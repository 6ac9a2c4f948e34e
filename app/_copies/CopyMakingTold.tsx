import styles from './Copies.module.css';
import type { CopyMaking } from './useMakingCopy';

/** How far the making of a copy is, and what became of it. */
export function CopyMakingTold({ making }: Readonly<{ making: CopyMaking }>) {
  switch (making.kind) {
    case 'idle':
      return null;
    case 'making':
      return (
        <p className={styles.words}>
          Making the copy. With many pictures that takes a while; you can go on working.
        </p>
      );
    case 'made':
      return (
        <div>
          <p>{making.sentence}</p>
          {making.lacks.map((sentence) => (
            <p key={sentence} className={styles.wrong}>
              {sentence}
            </p>
          ))}
        </div>
      );
    case 'failed':
      return (
        <p className={styles.wrong}>
          The copy could not be made. Free some room on the device and try again; nothing here was changed.
        </p>
      );
    default:
      return making satisfies never;
  }
}
