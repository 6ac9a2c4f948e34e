'use client';

import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { agreedEdits, agreedJobs } from '@/app/_order/notes/agreedEdits';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { otherThanAgreedWords, TAKE_AGREED } from '@/app/_words/orders/notes/agreedJobWords';
import { stepWords, tooEarlyWords } from '@/app/_words/orders/notes/orderStepWords';
import { dueDayProblem } from '@/app/_words/orders/orderHeadWords';
import { standingNotes } from '@/app/_words/orders/waits/standingWords';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { likelyNumber } from '@/lib/orders/likelyNumber';
import styles from './Waits.module.css';

/** What stands in the way or was done out of turn: told before what comes next. */
export function StandingRows({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { standing, order, today, formatter } = on;
  const { problem, note, noteSteps } = useNoting(on);
  const isMade = ['delivered', 'paid', 'closed'].includes(standing.state) || standing.side.side !== 'open';
  const days = { dueOn: dayToKeep(order, standing.agreed), wantedOn: order.wantedOn };
  const due = dueDayProblem(days, isMade, today, formatter);
  const notes = standingNotes(standing, formatter);
  const isNumbered = standing.number !== null;
  const { agreed } = standing;
  const others = agreed === null || isMade ? [] : agreedJobs(on, agreed.quote.body, agreed.alternativeId);
  const isQuiet = due === null && notes.length === 0 && others.length === 0;
  if (isNumbered && isQuiet && standing.tooEarly.length === 0) return null;
  const giveNumber = () => {
    const events = on.workspace.entries.orderEvent;
    const letter = on.workspace.device?.letter ?? null;
    const number = likelyNumber(events, letter, Number(today.slice(0, 4)));
    // The write gives it the next that is free.
    noteSteps(today, [{ what: 'enquired', number }]);
  };
  return (
    <>
      <ul className={styles.standing}>
        {!isNumbered && (
          <FindingRow
            severity="note"
            sentence="The order has no number yet."
            detail="Its quote bears the number of the order."
            fix={{ label: 'Give it one', onFix: giveNumber }}
          />
        )}
        {due !== null && <FindingRow severity="stop" {...due} />}
        {standing.tooEarly.map(({ entryId, step, day, waitsFor }) => {
          const label = `Take back: ${stepWords[step.what]}`;
          return (
            <FindingRow
              key={on.workspace.firstId(entryId)}
              severity="caution"
              {...tooEarlyWords(step.what, formatter.day(day), waitsFor)}
            >
              <Button kind="quiet" onPress={() => note(label, [{ kind: 'takeBack', body: { entryId } }])}>
                {label}
              </Button>
            </FindingRow>
          );
        })}
        {others.map((job) => (
          <FindingRow
            key={job.jobId}
            severity={standing.changes.length > 0 ? 'note' : 'caution'}
            {...otherThanAgreedWords(job, standing.changes.length > 0, formatter)}
            fix={{
              label: TAKE_AGREED,
              onFix: () => note(TAKE_AGREED, [], [], agreedEdits(on, [job], agreed?.alternativeId ?? null)),
            }}
          />
        ))}
        {notes.map(({ sentence, detail }) => (
          <FindingRow key={sentence} severity="note" sentence={sentence} detail={detail} />
        ))}
      </ul>
      <p role="alert">{problem}</p>
    </>
  );
}
