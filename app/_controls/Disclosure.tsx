'use client';

import { type ReactNode, useId, useState } from 'react';
import styles from './Disclosure.module.css';
import { useHash } from './useHash';

type DisclosureProps = Readonly<{
  heading: ReactNode;
  /** One quiet line beside the heading that says what is inside. */
  line?: ReactNode;
  level?: 2 | 3 | 4;
  /** Opens when the address names this id or one that begins with it. */
  id: string;
  /** Open from the start, as what has just been added. */
  open?: boolean;
  children: ReactNode;
}>;

/** A heading that opens what is beneath it. */
export function Disclosure({ heading, line, level = 3, id, open = false, children }: DisclosureProps) {
  const hash = useHash();
  const bodyId = useId();
  const [chosen, setChosen] = useState<boolean | null>(null);
  const isOpen = chosen ?? (open || hash === id || hash.startsWith(`${id}-`));
  const [opened, setOpened] = useState(isOpen);
  // Once opened it stays: a half-typed text is not thrown away by folding.
  if (isOpen && !opened) setOpened(true);
  const Heading = headings[level];
  return (
    <div className={styles.disclosure} id={id}>
      <Heading className={styles.heading}>
        <button
          className={styles.toggle}
          type="button"
          aria-expanded={isOpen}
          aria-controls={opened ? bodyId : undefined}
          onClick={() => setChosen(!isOpen)}
        >
          <svg className={styles.arrow} viewBox="0 0 12 12" aria-hidden="true" focusable="false">
            <path d="M4 2l4 4-4 4" />
          </svg>
          <span className={styles.words}>
            <span className={styles.name}>{heading}</span>{' '}
            {line && <span className={styles.line}>{line}</span>}
          </span>
        </button>
      </Heading>
      {opened && (
        <div className={styles.body} id={bodyId} hidden={!isOpen}>
          {children}
        </div>
      )}
    </div>
  );
}

// Helpers

const headings = { 2: 'h2', 3: 'h3', 4: 'h4' } as const;
