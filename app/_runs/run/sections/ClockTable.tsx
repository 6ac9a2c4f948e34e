import { Fragment } from 'react';
import styles from '@/app/_runs/run/Run.module.css';
import { clockWords } from '@/app/_words/clockWords';
import { type ClockDesign, clockPartWords } from '@/app/_words/making/runs/clockPartWords';
import { weekdayWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { minutesWords } from '@/app/_words/minutesWords';
import type { ClockPart } from '@/shared/schemas/making/runPapers';

type ClockTableProps = Readonly<{
  clock: readonly ClockPart[];
  designs: readonly ClockDesign[];
  locale: string;
}>;

/** Every part of the work with its times, day by day. */
export function ClockTable({ clock: all, designs, locale }: ClockTableProps) {
  const clock = all.filter(({ minutes }) => Math.round(minutes) > 0);
  const days = [...new Set(clock.map(({ day }) => day))];
  const { clockHead: head } = runTable;
  return (
    <table className={styles.table} aria-label={runTable.clock}>
      <thead>
        <tr>
          <th scope="col">{head.what}</th>
          <th scope="col">{head.from}</th>
          <th scope="col">{head.to}</th>
          <th scope="col">{head.takes}</th>
        </tr>
      </thead>
      <tbody>
        {days.map((day) => (
          <Fragment key={day}>
            <tr>
              <th className={styles.day} scope="rowgroup" colSpan={4}>
                {weekdayWords(day, locale)}
              </th>
            </tr>
            {clock
              .filter((part) => part.day === day)
              .map((part) => (
                <tr
                  key={`${part.what} ${part.name} ${part.fromMinute} ${part.turn?.jobId} ${part.turn?.lineId}`}
                >
                  <th scope="row">{clockPartWords(part, designs)}</th>
                  <td className={styles.figure}>{clockWords(part.fromMinute, locale)}</td>
                  <td className={styles.figure}>{clockWords(part.fromMinute + part.minutes, locale)}</td>
                  <td className={styles.figure}>{minutesWords(Math.round(part.minutes), locale)}</td>
                </tr>
              ))}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
