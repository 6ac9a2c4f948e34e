'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import { classes } from '@/app/_controls/classes';
import { goToSection } from './goToSection';
import styles from './SectionIndex.module.css';
import type { Section, SectionState } from './sections';

type SectionIndexProps<Id extends string> = Readonly<{
  /** Of what they are the sections, for a screen reader: “Sections of this job”. */
  label: string;
  sections: readonly Section<Id>[];
  states: Readonly<Record<Id, SectionState>>;
  current: Id;
  /** Opens all of it as a sheet, where only a row of chips has room. */
  onOpenSheet: () => void;
  /** What can be done with the whole, at the foot of the rail. */
  foot?: ReactNode;
}>;

/** The sections with the state of each: a rail at the side, or a row of chips where there is no room for one. */
export function SectionIndex<Id extends string>(props: SectionIndexProps<Id>) {
  const { label, sections, states, current, onOpenSheet, foot } = props;
  const row = useRef<HTMLOListElement>(null);
  // Only when it moves: to look where it is makes the browser lay the whole page out at once.
  // biome-ignore lint/correctness/useExhaustiveDependencies: both say where the chip is, the words by their width
  useEffect(() => {
    // Only the row is moved: the page stays where the reader is.
    const chip = row.current?.querySelector<HTMLElement>('[aria-current]');
    if (chip) row.current?.scrollTo?.({ left: chip.offsetLeft - 12 });
  }, [current, states]);
  return (
    <nav className={styles.index} aria-label={label}>
      <button className={styles.all} type="button" onClick={onOpenSheet} aria-label="All sections">
        <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
          <path d="M3 5h14M3 10h14M3 15h9" />
        </svg>
      </button>
      <ol className={styles.list} ref={row}>
        {sections.map(({ id, name }, index) => {
          const { text, tone, count } = states[id];
          return (
            <li key={id}>
              <a
                className={classes(styles.link, styles[tone])}
                href={`#${id}`}
                aria-current={current === id ? 'location' : undefined}
                onClick={(event) => {
                  event.preventDefault();
                  goToSection(id);
                }}
              >
                <span className={styles.numeral}>{index + 1}</span>
                <span className={styles.name}>{name}</span> <span className={styles.state}>{text}</span>
                {count > 0 && (
                  <span className={styles.count} aria-hidden="true">
                    {count}
                  </span>
                )}
              </a>
            </li>
          );
        })}
      </ol>
      {foot && <div className={styles.foot}>{foot}</div>}
    </nav>
  );
}
