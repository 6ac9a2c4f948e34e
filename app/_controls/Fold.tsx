'use client';

import { type ReactNode, useContext, useState } from 'react';
import styles from './Fold.module.css';
import { isHeldBy, RevealContext } from './reveal';

type FoldProps = Readonly<{
  summary: ReactNode;
  /** One quiet line after it that says what is inside. */
  line?: ReactNode;
  /** Stands at the end of the line; its room is kept while it is null. */
  aside?: ReactNode;
  /** Ids, or beginnings of ids, of the fields inside. */
  holds?: readonly string[];
  id?: string | undefined;
  /** Whether it stands open to begin with. */
  isOpenAtFirst?: boolean;
  children: ReactNode;
}>;

/** Something folded away under one line; opens by itself when a field inside is to be shown. */
export function Fold({ summary, line, aside, holds = [], id, isOpenAtFirst = false, children }: FoldProps) {
  const reveal = useContext(RevealContext);
  const [open, setOpen] = useState(isOpenAtFirst);
  const [opened, setOpened] = useState(false);
  const [turn, setTurn] = useState(0);
  if (reveal.turn !== turn) {
    setTurn(reveal.turn);
    if (isHeldBy(reveal.id, holds)) setOpen(true);
  }
  if (open && !opened) setOpened(true);
  return (
    <details className={styles.fold} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={styles.summary} id={id}>
        <span className={styles.words}>
          <span className={styles.name}>{summary}</span>
          {line && <span className={styles.line}>{line}</span>}
        </span>
        {aside !== undefined && <span className={styles.aside}>{aside}</span>}
      </summary>
      {/* Once opened it stays: a half-typed text is not thrown away by folding. */}
      {opened && <div className={styles.body}>{children}</div>}
    </details>
  );
}
