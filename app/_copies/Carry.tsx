'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { fileName, saveBlob } from '@/app/_files/saveBlob';
import { canShare, shareFile } from '@/app/_files/shareFile';
import type { CopyActions } from '@/app/_store/copyActions';
import { formatterFor } from '@/app/_words/formatter';
import { carriedWords } from '@/app/_words/store/carriedWords';
import { notInCopyWords } from '@/app/_words/store/copyFileWords';
import styles from './Carry.module.css';

type CarryProps = Readonly<{
  store: Pick<CopyActions, 'makeCopy' | 'lookAtCopy'>;
  what: Readonly<{ kind: string; id: string; name: string }>;
  /** Says which, where several stand under each other. */
  spoken?: string;
}>;

type Carrying =
  | { readonly kind: 'idle' }
  | { readonly kind: 'making' }
  | {
      readonly kind: 'ready';
      readonly file: File;
      readonly held: string;
      readonly lacks: string | null;
      readonly done: 'saved' | 'shared' | null;
    }
  | { readonly kind: 'failed' };

/** Makes a file of one thing with all that hangs on it, and hands it on. */
export function Carry({ store, what, spoken }: CarryProps) {
  const formatter = formatterFor(useTextContext());
  const [carrying, setCarrying] = useState<Carrying>({ kind: 'idle' });
  const make = async () => {
    setCarrying({ kind: 'making' });
    try {
      const made = await store.makeCopy({ kind: what.kind, id: what.id });
      const file = new File([made.file], fileName(`${what.name}.zip`), { type: 'application/zip' });
      // What is told is what can be read of it, and not what was meant.
      const look = await store.lookAtCopy(file);
      const kinds = look.state === 'copy' ? look.plan.counts.kinds : {};
      const isShared = canShare(file);
      if (!isShared) saveBlob(file.name, file);
      setCarrying({
        kind: 'ready',
        file,
        held: carriedWords(what, kinds, file.size, formatter),
        lacks: made.leftOut.length > 0 ? notInCopyWords(made.leftOut, formatter) : null,
        done: isShared ? null : 'saved',
      });
    } catch (error) {
      setCarrying({ kind: 'failed' });
      reportError(error);
    }
  };
  const send = async (file: File) => {
    const outcome = await shareFile(file);
    // Where the browser refuses in the end, the file is saved: it is made already.
    if (outcome === 'cannot') saveBlob(file.name, file);
    if (outcome === 'stopped') return;
    setCarrying((now) =>
      now.kind === 'ready' ? { ...now, done: outcome === 'shared' ? 'shared' : 'saved' } : now,
    );
  };
  const save = (ready: Extract<Carrying, { kind: 'ready' }>) => {
    saveBlob(ready.file.name, ready.file);
    setCarrying({ ...ready, done: 'saved' });
  };
  return (
    <div className={styles.carry}>
      <Button
        spoken={spoken}
        blockedBy={carrying.kind === 'making' ? 'The file is being made.' : undefined}
        onPress={() => void make()}
      >
        Carry to another device
      </Button>
      <div role="status">
        {carrying.kind === 'making' && <p className={styles.words}>Making the file…</p>}
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
              On the other device choose <em>Bring a file in</em>, under the jobs or in the workshop. Brought
              in twice it does no harm.
            </p>
            {carrying.done === null && (
              <div className={styles.row}>
                <Button kind="strong" onPress={() => void send(carrying.file)}>
                  Send it
                </Button>
                <Button onPress={() => save(carrying)}>Save it as a file</Button>
              </div>
            )}
          </div>
        )}
      </div>
    </div>
  );
}
