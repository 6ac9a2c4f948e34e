'use client';

import { useRef, useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { formatterFor } from '@/app/_words/formatter';
import {
  changedWords,
  freeWords,
  leftOutOfRepeat,
  NOT_TAKEN_REPEAT,
  priceWords,
} from '@/app/_words/orders/board/repeatWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { repeatOrder } from '@/lib/orders/repeat/repeatOrder';
import { changedSinceQuote } from './changedSinceQuote';
import { noteRepeat } from './noteEnquiry';
import styles from './RepeatPanel.module.css';

/** What a repeat is made from, as it is when it is asked for. */
export interface Repeatable {
  readonly workspace: ReadyWorkspace;
  readonly book: OrderBook;
  readonly onRepeated: (orderId: string) => void;
}

type RepeatPanelProps = Repeatable & Readonly<{ order: BoardOrder }>;

/** What a repeat would be: free where it is made already, by the rates of today; made with one more press. */
export function RepeatPanel({ order, workspace, book, onRepeated }: RepeatPanelProps) {
  const [orderId] = useState(newId);
  const [isRefused, setRefused] = useState(false);
  const isMade = useRef(false);
  const [repeated] = useState(() =>
    repeatOrder({
      facts: order.facts,
      standing: order.standing,
      jobs: Object.fromEntries(
        order.facts.order.jobIds.flatMap((jobId) => {
          const kept = book.jobOf(jobId);
          return kept === null ? [] : [[jobId, kept.job]];
        }),
      ),
      workshop: workspace.workshop,
      today: today(),
      makeId: newId,
      orderNames: workspace.orders.map((kept) => kept.order.name),
      jobNames: workspace.jobs.map(({ job }) => job.name),
    }),
  );
  const [changed] = useState(() => changedSinceQuote(order, repeated, { workspace, book }));
  const quotedOn = (order.standing.agreed?.quote ?? order.standing.lastQuote)?.body.issuedOn ?? null;
  const formatter = formatterFor(workspace.workshop);
  const make = () => {
    if (isMade.current) return;
    isMade.current = noteRepeat(workspace, orderId, repeated, today());
    setRefused(!isMade.current);
    if (isMade.current) onRepeated(orderId);
  };
  return (
    <div className={styles.panel}>
      <ul className={styles.told}>
        {[
          ...freeWords(repeated, formatter),
          ...leftOutOfRepeat(repeated, formatter),
          ...(changed === null || quotedOn === null
            ? []
            : changedWords(
                changed,
                quotedOn,
                (id) => workspace.artworks[id]?.name ?? 'A picture',
                formatter,
              )),
          ...priceWords(repeated, formatter),
        ].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Button kind="strong" onPress={make}>
        Make “{repeated.order.name}”
      </Button>
      {isRefused && <p role="alert">{NOT_TAKEN_REPEAT}</p>}
    </div>
  );
}
