'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import styles from './BottomSheet.module.css';
import { Button } from './Button';

type BottomSheetProps = Readonly<{
  /** Told to who cannot see it. */
  label: string;
  /** Told after the dialog has closed, whatever closed it; then it is taken away. */
  onClose: () => void;
  /** What lies on it; is given what closes it, and gives the focus back at once. */
  children: (close: () => void) => ReactNode;
}>;

/**
 * Lies over the lower part of the screen while it is there. The browser's own dialog keeps the focus inside, closes on
 * Escape and gives the focus back to what opened it.
 */
export function BottomSheet({ label, onClose, children }: BottomSheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const sheet = dialog.current;
    const before = document.activeElement;
    if (sheet?.open === false) sheet.showModal();
    // What lies around the sheet belongs to the dialog itself. Escape does the same for the keyboard.
    const closeAround = (event: Event) => {
      if (event.target === sheet) sheet?.close();
    };
    sheet?.addEventListener('click', closeAround);
    return () => {
      sheet?.removeEventListener('click', closeAround);
      // Taken away while it stands open, as after a tap in it, the dialog gives nothing back by itself.
      if (sheet?.open && before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  const close = () => dialog.current?.close();
  return (
    <dialog className={styles.sheet} ref={dialog} aria-label={label} onClose={onClose}>
      <div className={styles.room}>
        {children(close)}
        <div className={styles.close}>
          <Button kind="strong" onPress={close}>
            Close
          </Button>
        </div>
      </div>
    </dialog>
  );
}
