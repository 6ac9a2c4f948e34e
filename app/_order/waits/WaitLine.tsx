'use client';

import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OpenForm } from '@/app/_order/notes/useOpenForm';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import styles from './Waits.module.css';
import { WhoseMark } from './WhoseMark';
import type { WaitAct } from './waitAct';
import type { WaitRow } from './waitRows';

type WaitLineProps = Readonly<{
  on: OrderOnScreen;
  row: WaitRow;
  isOpen: boolean;
  form: OpenForm;
  onOpen: (isOpen: boolean) => void;
  onPaper: (tab: PaperTab) => void;
  onRoom: (place: OrderPlace) => void;
  /** It was noted. */
  onDone: () => void;
}>;

/** One thing the order waits for, with the one button that notes it. */
export function WaitLine({ on, row, isOpen, form, onOpen, onPaper, onRoom, onDone }: WaitLineProps) {
  const { workspace, orderId, today, who } = on;
  const { act, what, line, whose, locked } = row;
  const isLocked = locked.length > 0;
  const leave = () => onOpen(false);
  const press = () => {
    if (act === null) return;
    if (act.kind === 'papers') return onPaper(act.tab);
    if (act.kind === 'room') return onRoom(act.place);
    if (act.kind !== 'item') return onOpen(!isOpen);
    const outcome = workspace.changeOrder(orderId, what, (order) => ({
      ...order,
      openItems: order.openItems.map((item) => (item.id === act.itemId ? { ...item, doneOn: today } : item)),
    }));
    if (outcome.state === 'shown') onDone();
  };
  return (
    <li className={classes(styles.row, isLocked && styles.locked)}>
      <WhoseMark {...{ whose, who }} />
      <div className={styles.words}>
        <p>
          <bdi>{what}</bdi>
        </p>
        <p className={styles.line}>{line}</p>
        {act?.kind === 'step' && act.what === 'blanksOrdered' && (
          <LaterPart part={laterParts.blanksToBuy} what="How many to buy" props={{ on }} />
        )}
        {isLocked && (
          <Button
            kind="quiet"
            expanded={isOpen}
            spoken={`Do it even so: ${what}`}
            onPress={() => onOpen(!isOpen)}
          >
            Do it even so
          </Button>
        )}
      </div>
      {act !== null && (
        <Button
          spoken={`${act.label}: ${what}`}
          blockedBy={isLocked ? line : undefined}
          expanded={isLocked || !opens.includes(act.kind) ? undefined : isOpen}
          onPress={press}
        >
          {act.label}
        </Button>
      )}
      {isOpen && (
        <div className={styles.wide}>
          {isLocked ? (
            <LaterPart
              part={laterParts.override}
              what="The form"
              props={{ on, form, onDone, gates: locked, onLeave: leave }}
            />
          ) : act?.kind === 'payment' ? (
            <LaterPart
              part={laterParts.payment}
              what="The form"
              props={{ on, form, onDone, dueMinor: act.dueMinor, onLeave: leave }}
            />
          ) : (
            act?.kind === 'step' && (
              <LaterPart
                part={laterParts.stepNote}
                what="The form"
                props={{ on, form, onDone, what: act.what, onLeave: leave }}
              />
            )
          )}
        </div>
      )}
    </li>
  );
}

// Helpers

/** What opens a form beneath the row. */
const opens: readonly WaitAct['kind'][] = ['step', 'payment'];
