'use client';

import { type ReactNode, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import styles from './FileChooser.module.css';
import { useFileDrop } from './useFileDrop';

type FileChooserProps = Readonly<{
  /** What the button says. */
  button: string;
  /** What the field is called for whoever cannot see the button. */
  label: string;
  /** Kinds of file, as the browser's own field takes them. */
  accept: string;
  onFiles: (files: readonly File[]) => void;
  kind?: 'strong' | 'plain';
  children?: ReactNode;
}>;

/** Where a file is chosen or dropped. */
export function FileChooser({ button, label, accept, onFiles, kind = 'plain', children }: FileChooserProps) {
  const input = useRef<HTMLInputElement>(null);
  const { isOver, zone } = useFileDrop(onFiles);
  return (
    <div className={classes(styles.zone, isOver && styles.over)} {...zone}>
      <div className={styles.ways}>
        <Button kind={kind} onPress={() => input.current?.click()}>
          {button}
        </Button>
        <span className={styles.hint}>or drop it here</span>
        <input
          ref={input}
          className="visuallyHidden"
          type="file"
          accept={accept}
          tabIndex={-1}
          aria-label={label}
          onChange={(event) => {
            const files = [...(event.target.files ?? [])];
            // The same file may be chosen again once it is mended.
            event.target.value = '';
            if (files.length > 0) onFiles(files);
          }}
        />
      </div>
      {children !== undefined && <p className={styles.hint}>{children}</p>}
    </div>
  );
}
