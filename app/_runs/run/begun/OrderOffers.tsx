'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import styles from '@/app/_runs/run/Run.module.css';
import { runTable } from '@/app/_words/making/runs/runTable';
import { doesNotCountWords, notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { stepWords } from '@/app/_words/orders/notes/orderStepWords';
import { type RunTold, stepToNote } from '@/lib/making/list/stepToNote';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { shutGates } from '@/lib/orders/shutGates';
import type { BegunOnScreen } from './begunOnScreen';

/** Steps that the run shows its orders have reached, each noted by one tap and never by itself. */
export function OrderOffers({ on }: Readonly<{ on: BegunOnScreen }>) {
  const { facts, pressed, workspace, run, today } = on;
  const book = useOrderBook(workspace);
  const [problem, setProblem] = useState('');
  const ids = [...new Set(run.works.flatMap(({ orderId }) => orderId ?? []))];
  const offers = ids.flatMap((orderId) => {
    const found = book.of(orderId);
    if (found === null) return [];
    const of = { orderId, jobIds: found.facts.order.jobIds };
    const step = stepToNote(facts, pressed, of, found.standing);
    return step === null ? [] : [{ found, step }];
  });
  const note = ({ facts: order }: BoardOrder, what: RunTold) => {
    const versions = order.artworks.length > 0 && { versions: [...order.artworks] };
    const step = { what, note: '', ...versions };
    const body = { orderId: order.orderId, day: today, step };
    const { state } = workspace.note(stepWords[what], [{ kind: 'orderEvent', body }]);
    setProblem(state === 'shown' ? '' : notNotedWords(state));
  };
  if (offers.length === 0) return null;
  return (
    <div className={styles.asks}>
      <ul className={styles.rows}>
        {offers.map(({ found, step }) => {
          const { orderId, order } = found.facts;
          const shut = shutGates(found.standing, step);
          return (
            <li key={orderId} className={styles.row}>
              <div>
                <p>
                  <bdi>{order.name}</bdi>: {runTable.reached[step]}
                </p>
                {shut.length > 0 && <p className={styles.quiet}>{doesNotCountWords(shut)}</p>}
              </div>
              <Button spoken={runTable.noteOf(stepWords[step], order.name)} onPress={() => note(found, step)}>
                {runTable.note(stepWords[step])}
              </Button>
            </li>
          );
        })}
      </ul>
      <p role="alert">{problem}</p>
    </div>
  );
}
