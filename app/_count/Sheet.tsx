'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from './Sheet.module.css';

type SheetProps = Readonly<{ name: string; onClose: () => void; children: ReactNode }>;

/** Over the lower part of the screen. The browser's own dialog keeps the focus inside, and closes on Escape. */
export function Sheet({ name, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    if (dialog.current?.open === false) dialog.current.showModal();
    return () => {
      // Taken away while it stands open, as after a tap in it, the dialog gives nothing back by itself.
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog className={styles.sheet} ref={dialog} aria-label={name} onClose={onClose}>
      <div className={styles.room}>
        <h2 className={styles.name}>{name}</h2>
        {children}
        <div className={styles.close}>
          <Button kind="strong" onPress={() => dialog.current?.close()}>
            Close
          </Button>
        </div>
      </div>
    </dialog>
  );
}
