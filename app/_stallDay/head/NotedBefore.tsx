'use client';

import Link from 'next/link';
import type { Noted } from '@/app/_stallBook/notedBefore';
import type { Formatter } from '@/app/_words/formatter';
import { notedAtWords, notedNames } from '@/app/_words/stall/notedWords';
import { linesNoted } from './linesNoted';
import styles from './Noted.module.css';
import { NotedLines } from './NotedLines';

type NotedBeforeProps = Readonly<{ noted: Noted; formatter: Formatter }>;

/** At the head of a plan: what was noted at the fair that it is like. Nothing where nothing was. */
export function NotedBefore({ noted, formatter }: NotedBeforeProps) {
  const { stallDayId, title, days, issuedOn } = noted.close;
  if (linesNoted(noted, formatter).length === 0) return null;
  return (
    <section className={styles.noted} aria-labelledby="stall-noted">
      <h2 className={styles.heading} id="stall-noted">
        {notedAtWords(title, formatter.day(days[0] ?? issuedOn))}
      </h2>
      <NotedLines {...{ noted, formatter }} />
      <Link className={styles.see} href={`/stall/${stallDayId}`}>
        {notedNames.see}
      </Link>
    </section>
  );
}
