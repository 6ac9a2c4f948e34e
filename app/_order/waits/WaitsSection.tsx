'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { focusById } from '@/app/_controls/focusById';
import { Answer } from '@/app/_docket/common/Answer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import { useOpenForm } from '@/app/_order/notes/useOpenForm';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import { overWords } from '@/app/_words/orders/waits/boardWaitWords';
import { waitAnswer } from '@/app/_words/orders/waits/orderWaitWords';
import { billsOf } from '@/lib/orders/bills';
import { ElseHappened } from './ElseHappened';
import { StandingRows } from './StandingRows';
import { WaitLine } from './WaitLine';
import styles from './Waits.module.css';
import { waitRows } from './waitRows';

const ID = 'order-waits';

type WaitsSectionProps = Readonly<{
  on: OrderOnScreen;
  bench: Bench;
  /** A paper is to be written. */
  onPaper: (tab: PaperTab) => void;
  /** Leads to a place of the order where something is missing. */
  onRoom: (place: OrderPlace) => void;
}>;

/** What the order waits for: whose it is, what, by when, and one button for each. */
export function WaitsSection({ on, bench, onPaper, onRoom }: WaitsSectionProps) {
  const { turn, standing, who } = on;
  const rows = waitRows(on, bench);
  const { open, show, formOf } = useOpenForm(
    on,
    'wait',
    (name) => name === 'reminded' || rows.some(({ id }) => id === name),
  );
  const close = () => {
    show(null);
    // The row goes with what was noted; its heading stays.
    focusById(`${ID}-heading`);
  };
  const waitsOnThem = turn.waits.some((one) => one.turn === 'customer' && one.why !== 'openItem');
  return (
    <CardSection
      numeral={null}
      isFirst
      heading="What it waits for"
      id={ID}
      answer={<Answer words={waitAnswer(turn, who, overWords(standing), standing.state !== 'accepted')} />}
    >
      {billsOf(on.facts.happened).length > 0 && (
        <LaterPart part={laterParts.billTroubles} what="What is told of invoices" props={{ on, onPaper }} />
      )}
      <StandingRows on={on} />
      <ul className={styles.rows}>
        {rows.map((row) => (
          <WaitLine
            key={row.id}
            {...{ on, row, onPaper, onRoom }}
            isOpen={open === row.id}
            form={formOf(row.id)}
            onOpen={(isOpen) => show(isOpen ? row.id : null)}
            onDone={close}
          />
        ))}
      </ul>
      {waitsOnThem && (
        <div className={styles.remind}>
          <Button
            kind="quiet"
            expanded={open === 'reminded'}
            onPress={() => show(open === 'reminded' ? null : 'reminded')}
          >
            I reminded {who}
          </Button>
        </div>
      )}
      {open === 'reminded' && (
        <LaterPart
          part={laterParts.stepNote}
          what="The form"
          props={{ on, what: 'reminded', form: formOf('reminded'), onDone: close, onLeave: close }}
        />
      )}
      <ElseHappened on={on} />
    </CardSection>
  );
}
