'use client';

import { type ReactNode, type RefObject, useRef } from 'react';
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
  /** Whether several may be chosen at once. */
  several?: boolean;
  kind?: 'strong' | 'plain';
  /** The button itself, for whoever gives it the focus back. */
  place?: RefObject<HTMLButtonElement | null>;
  children?: ReactNode;
}>;

/** Where a file is chosen or dropped. */
export function FileChooser(props: FileChooserProps) {
  const { button, label, accept, onFiles, several = false, kind = 'plain', place, children } = props;
  const input = useRef<HTMLInputElement>(null);
  const { isOver, zone } = useFileDrop(onFiles);
  return (
    <div className={classes(styles.zone, isOver && styles.over)} {...zone}>
      <div className={styles.ways}>
        <Button kind={kind} ref={place} onPress={() => input.current?.click()}>
          {button}
        </Button>
        <span className={classes(styles.hint, styles.drop)}>or drop it here</span>
        <input
          ref={input}
          className="visuallyHidden"
          type="file"
          accept={accept}
          multiple={several}
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
