'use client';

import { useContext } from 'react';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { differenceWords } from '@/app/_words/store/differenceWords';
import type { Arriving } from '@/app/_words/store/fateWords';
import type { DraftMeeting } from '@/lib/copies/arrival';
import { draftDifferences } from '@/lib/copies/draftDifferences';
import styles from './DraftChoices.module.css';

/** Places told one by one; the rest is counted. */
const MOST_TOLD = 8;

type DraftDifferencesProps = Readonly<{ meeting: DraftMeeting; it: Arriving }>;

/** What differs between the draft here and the one that arrives, place by place. */
export function DraftDifferences({ meeting: { kind, mine, theirs }, it }: DraftDifferencesProps) {
  const formatter = formatterFor(useTextContext());
  const { nameOf } = useContext(FormerThingsContext);
  if (mine === null || mine.deletedAt !== undefined || theirs.deletedAt !== undefined) return null;
  const all = draftDifferences(mine.body, theirs.body);
  const told = all.slice(0, MOST_TOLD).map((difference) => ({
    key: difference.path.join(' '),
    ...differenceWords(difference, { kind, mine: mine.body, theirs: theirs.body }, { formatter, nameOf }),
  }));
  return (
    <>
      <ul className={styles.differences}>
        {told.map(({ key, place, mine: here, theirs: there }) => (
          <li key={key}>
            {place}
            <span className={styles.sides}>
              here <bdi>{here}</bdi>, in {it} <bdi>{there}</bdi>
            </span>
          </li>
        ))}
      </ul>
      {all.length > MOST_TOLD && (
        <p className={styles.more}>And {formatter.count(all.length - MOST_TOLD, 'more place')} like these.</p>
      )}
    </>
  );
}
