import { Button } from '@/app/_controls/Button';
import styles from './Carry.module.css';
import type { useCarrying } from './useCarrying';

/** How far a carried file is, what is in it, and how it is handed on. */
export function CarryTold({ from }: Readonly<{ from: ReturnType<typeof useCarrying> }>) {
  const { carrying, send, save } = from;
  return (
    <div aria-live="polite" className={styles.told}>
      {carrying.kind === 'making' && <p className={styles.words}>Making the file of {carrying.name}…</p>}
      {carrying.kind === 'failed' && (
        <p className={styles.wrong}>
          The file could not be made. Free some room on the device and try again; nothing here was changed.
        </p>
      )}
      {carrying.kind === 'ready' && (
        <div className={styles.ready}>
          <p>
            {carrying.done === 'saved' && `Saved as ${carrying.file.name}. `}
            {carrying.done === 'shared' && 'Handed on. '}
            {carrying.held}
          </p>
          {carrying.lacks !== null && <p className={styles.wrong}>{carrying.lacks}</p>}
          <p className={styles.words}>
            On the other device choose <em>Bring a file in</em>, under the jobs or in the workshop. Brought in
            twice it does no harm.
          </p>
          {carrying.done === null && (
            <div className={styles.row}>
              <Button kind="strong" onPress={() => send(carrying)}>
                Send it
              </Button>
              <Button onPress={() => save(carrying)}>Save it as a file</Button>
            </div>
          )}
        </div>
      )}
    </div>
  );
}
