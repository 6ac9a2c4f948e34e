'use client';

import Link from 'next/link';
import { memo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { LaterPart } from '@/app/_network/LaterPart';
import { orderAmountWords } from '@/app/_words/orders/board/orderAmountWords';
import { boardWaitWords } from '@/app/_words/orders/waits/boardWaitWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { orderNumberText } from '@/shared/orderNumberText';
import type { Workshop } from '@/shared/schemas/workshop';
import { laterParts } from './laterParts';
import styles from './OrderRow.module.css';
import type { Repeatable } from './RepeatPanel';
import { TrackStub } from './TrackStub';
import type { OrderActions } from './useOrderActions';

type OrderRowProps = Readonly<{
  order: BoardOrder;
  pieces: string;
  today: string;
  workshop: Workshop;
  actions: OrderActions;
  /** What is repeated: made when it is asked for. */
  repeat: () => Repeatable;
}>;

/** One order of the board. Drawn again only when something of it changes, so that a long board stays quick. */
export const OrderRow = memo(function OrderRow(props: OrderRowProps) {
  const { order, pieces, today, workshop, actions, repeat } = props;
  const { facts, standing } = order;
  const { orderId } = facts;
  const { name, archivedOn } = facts.order;
  const [isMore, setMore] = useState(false);
  const wait = boardWaitWords(order, today, workshop);
  const { amount, owed } = orderAmountWords(standing, workshop);
  const isRepeatable = isMade(order);
  const button = isRepeatable ? 'Repeat' : 'More';
  const number = standing.number === null ? 'no number yet' : orderNumberText(standing.number);
  return (
    <li className={styles.row}>
      <div className={styles.track}>
        <TrackStub standing={standing} today={today} context={workshop} />
      </div>
      <div className={styles.order}>
        <Link className={styles.name} href={`/orders/${orderId}`}>
          <bdi>{name}</bdi>
        </Link>
        <p className={styles.under}>{[number, pieces].filter((part) => part !== '').join(', ')}</p>
      </div>
      <div className={styles.wait}>
        <p className={classes(styles.first, wait.isLate && styles.late)}>{wait.first}</p>
        {wait.second !== '' && <p className={styles.second}>{wait.second}</p>}
      </div>
      <div className={styles.money}>
        <p className={amount === null ? styles.none : styles.amount}>{amount ?? 'no price yet'}</p>
        {owed !== '' && <p className={styles.under}>{owed}</p>}
      </div>
      <div className={styles.acts}>
        <Button
          kind="quiet"
          expanded={isMore}
          spoken={isRepeatable ? `Repeat ${name}` : `More for ${name}`}
          onPress={() => setMore(!isMore)}
        >
          {button}
        </Button>
      </div>
      {isMore && (
        <div className={styles.more}>
          {isRepeatable && (
            <LaterPart part={laterParts.repeat} what="The repeat" props={{ order, ...repeat() }} />
          )}
          <Button
            kind={isRepeatable ? 'quiet' : 'plain'}
            spoken={archivedOn === null ? `Put away ${name}` : `Put back ${name}`}
            onPress={() => actions.putAway(order, archivedOn === null)}
          >
            {archivedOn === null ? 'Put away' : 'Put back'}
          </Button>
        </div>
      )}
    </li>
  );
}, isSameRow);

// Helpers

/** Whose turn it is follows from what happened and the day. */
function isSameRow(one: OrderRowProps, other: OrderRowProps): boolean {
  return (
    one.order.facts === other.order.facts &&
    one.order.standing === other.order.standing &&
    one.pieces === other.pieces &&
    one.today === other.today &&
    one.workshop === other.workshop &&
    one.actions === other.actions &&
    one.repeat === other.repeat
  );
}

/** What was delivered once can be wanted again. */
const isMade = ({ standing: { state } }: BoardOrder): boolean =>
  state === 'delivered' || state === 'paid' || state === 'closed';
