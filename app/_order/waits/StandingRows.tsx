'use client';

import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { wantedDayProblem } from '@/app/_words/orders/orderHeadWords';
import { stepWords, tooEarlyWords } from '@/app/_words/orders/orderStepWords';
import { standingNotes } from '@/app/_words/orders/standingWords';
import styles from './Waits.module.css';

/** What stands in the way or was done out of turn: told before what comes next. */
export function StandingRows({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { standing, order, today, formatter } = on;
  const { problem, note } = useNoting(on);
  const isMade = ['delivered', 'paid', 'closed'].includes(standing.state) || standing.side.side !== 'open';
  const wanted = wantedDayProblem(order.wantedOn, isMade, today, formatter);
  const notes = standingNotes(standing, formatter);
  if (wanted === null && notes.length === 0 && standing.tooEarly.length === 0) return null;
  return (
    <>
      <ul className={styles.standing}>
        {wanted !== null && <FindingRow severity="stop" {...wanted} />}
        {standing.tooEarly.map(({ entryId, step, day, waitsFor }) => {
          const label = `Take back: ${stepWords[step.what]}`;
          return (
            <FindingRow
              key={entryId}
              severity="caution"
              {...tooEarlyWords(step.what, formatter.day(day), waitsFor)}
            >
              <Button kind="quiet" onPress={() => note(label, [{ kind: 'takeBack', body: { entryId } }])}>
                {label}
              </Button>
            </FindingRow>
          );
        })}
        {notes.map(({ sentence, detail }) => (
          <FindingRow key={sentence} severity="note" sentence={sentence} detail={detail} />
        ))}
      </ul>
      <p role="alert">{problem}</p>
    </>
  );
}
