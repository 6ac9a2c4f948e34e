import { wallAt } from '@/app/_clock/wallAt';
import { Fold } from '@/app/_controls/Fold';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { clockWords } from '@/app/_words/clockWords';
import { besideWords } from '@/app/_words/stall/evening/resultWords';
import styles from './Slips.module.css';

/** What was noted at the stall beside sales. */
export function DayNotes({ on: { evening, formatter, locale } }: Readonly<{ on: EveningOnScreen }>) {
  const { count } = evening;
  const beside = besideWords(evening, formatter);
  if (count.notes.length === 0 && beside.length === 0) return null;
  return (
    <Fold summary="Noted on the day" line={formatter.count(count.notes.length + beside.length, 'line')}>
      <ul className={styles.lessons}>
        {beside.map((words) => (
          <li key={words}>{words}</li>
        ))}
        {count.notes.map(({ id, at, words }) => (
          <li key={id}>
            <p>
              <bdi>{words}</bdi>
              <span className={styles.why}>{clockWords(wallAt(at).minute, locale)}</span>
            </p>
          </li>
        ))}
      </ul>
    </Fold>
  );
}
