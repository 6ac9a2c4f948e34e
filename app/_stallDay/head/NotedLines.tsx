'use client';

import { useId } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import type { Noted } from '@/app/_stallBook/notedBefore';
import type { Formatter } from '@/app/_words/formatter';
import { moreNotedWords, notedNames } from '@/app/_words/stall/notedWords';
import { linesNoted, shownLines } from './linesNoted';
import styles from './Noted.module.css';

type NotedLinesProps = Readonly<{ noted: Noted; formatter: Formatter }>;

/** What was noted for next time, the first of it in sight. */
export function NotedLines({ noted, formatter }: NotedLinesProps) {
  const id = useId();
  const lines = linesNoted(noted, formatter);
  const shown = shownLines(lines);
  const rest = lines.slice(shown);
  return (
    <>
      <Lines lines={lines.slice(0, shown)} />
      {rest.length > 0 && (
        <Disclosure id={id} heading={shown === 0 ? notedNames.whole : moreNotedWords(rest.length)}>
          <Lines lines={rest} />
        </Disclosure>
      )}
    </>
  );
}

// Helpers

const Lines = ({ lines }: Readonly<{ lines: readonly string[] }>) =>
  lines.length > 0 && (
    <ul className={styles.lines}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
