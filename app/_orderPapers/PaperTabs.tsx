'use client';

import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { type PaperTab, paperTabWords } from '@/app/_words/orders/papers/paperTabWords';
import styles from './OrderPapers.module.css';

type PaperTabsProps = Readonly<{
  first: readonly PaperTab[];
  /** Behind a button until they are asked for. */
  more: readonly PaperTab[];
  shown: PaperTab;
  onShow: (tab: PaperTab) => void;
  children: ReactNode;
}>;

/** Tabs by the pattern of WAI-ARIA: arrows go from one to the next and show it, one stop for the tab key. */
export function PaperTabs({ first, more, shown, onShow, children }: PaperTabsProps) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const [isOpen, setOpen] = useState(false);
  const tabs = [...first, ...more.filter((tab) => isOpen || tab === shown)];
  const go = (tab: PaperTab | undefined) => {
    if (tab === undefined) return;
    onShow(tab);
    document.getElementById(`${id}-${tab}`)?.focus();
  };
  const turn = (event: KeyboardEvent) => {
    const at = tabs.indexOf(shown);
    const isFromRight = list.current !== null && getComputedStyle(list.current).direction === 'rtl';
    const [on, back] = isFromRight ? ['ArrowLeft', 'ArrowRight'] : ['ArrowRight', 'ArrowLeft'];
    const to =
      event.key === on
        ? (at + 1) % tabs.length
        : event.key === back
          ? (at - 1 + tabs.length) % tabs.length
          : event.key === 'Home'
            ? 0
            : event.key === 'End'
              ? tabs.length - 1
              : null;
    if (to === null) return;
    event.preventDefault();
    go(tabs[to]);
  };
  return (
    <>
      <div className={styles.tabRow}>
        <div ref={list} className={styles.tabs} role="tablist" aria-label="Papers" onKeyDown={turn}>
          {tabs.map((tab) => (
            <button
              key={tab}
              id={`${id}-${tab}`}
              className={classes(styles.tab, tab === shown && styles.shown)}
              type="button"
              role="tab"
              aria-selected={tab === shown}
              aria-controls={`${id}-panel`}
              tabIndex={tab === shown ? 0 : -1}
              onClick={() => onShow(tab)}
            >
              {paperTabWords[tab]}
            </button>
          ))}
        </div>
        {more.some((tab) => tab !== shown) && (
          <Button kind="quiet" expanded={isOpen} onPress={() => setOpen(!isOpen)}>
            {isOpen ? 'Fewer papers' : 'More papers'}
          </Button>
        )}
      </div>
      <div className={styles.panel} id={`${id}-panel`} role="tabpanel" aria-labelledby={`${id}-${shown}`}>
        {children}
      </div>
    </>
  );
}
