'use client';

import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { focusById } from '@/app/_controls/focusById';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { NotedStep } from '@/app/_order/notes/stepNote';
import { useOpenForm } from '@/app/_order/notes/useOpenForm';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { stepWords } from '@/app/_words/orders/notes/orderStepWords';
import styles from './Waits.module.css';

const ID = 'order-else';

/** Everything else that may happen to an order, in its turn or out of it. */
export function ElseHappened({ on }: Readonly<{ on: OrderOnScreen }>) {
  const groups = groupsOf(on);
  const offered = groups.flatMap(({ steps }) => steps);
  const forms = useOpenForm(on, 'else', (name) => offered.some((step) => step === name));
  const open = offered.find((step) => step === forms.open) ?? null;
  const close = () => {
    forms.show(null);
    focusById(ID);
  };
  return (
    <Fold
      summary="Something else happened"
      line={groups.length === 1 ? 'what is over may go on' : 'a change, a wish, on hold, lost'}
      id={ID}
      isOpenAtFirst={open !== null}
    >
      {groups.map(({ name, steps }) => (
        <div key={name} className={styles.group}>
          <h3 className={styles.groupName}>{name}</h3>
          <div className={styles.acts}>
            {steps.map((what) => (
              <Button
                key={what}
                expanded={open === what}
                onPress={() => forms.show(open === what ? null : what)}
              >
                {stepWords[what]}
              </Button>
            ))}
          </div>
          {open !== null && steps.includes(open) && (
            <LaterPart
              key={open}
              part={laterParts.stepNote}
              what="The form"
              props={{ on, what: open, form: forms.formOf(open), onDone: close, onLeave: close }}
            />
          )}
        </div>
      ))}
    </Fold>
  );
}

// Helpers

interface Group {
  readonly name: string;
  readonly steps: readonly NotedStep[];
}

/** What is over can be opened again, and only then may more happen to it. */
function groupsOf({ standing, facts }: OrderOnScreen): readonly Group[] {
  const { side, state, lastQuote, agreed, isQuotedAnew } = standing;
  const isOver = state === 'closed' || side.side === 'cancelled' || side.side === 'lost';
  const aside: readonly NotedStep[] =
    side.side === 'open'
      ? state === 'closed'
        ? ['reopened']
        : ['held', 'cancelled', 'lost']
      : side.side === 'held'
        ? ['resumed', 'cancelled', 'lost']
        : ['reopened'];
  const whole: Group = { name: 'The order as a whole', steps: aside };
  if (isOver) return [whole];
  // The accepted quote is not accepted again.
  const isAcceptable = lastQuote !== null && (agreed === null || isQuotedAnew);
  return [
    {
      name: 'What they want',
      steps: [
        ...(isAcceptable ? (['accepted'] as const) : []),
        ...(facts.artworks.length === 0 ? [] : (['approved', 'revised'] as const)),
        ...(['change', 'reminded'] as const),
      ],
    },
    {
      name: 'At the bench, out of turn',
      steps: [
        'blanksOrdered',
        'goodsIn',
        'scheduled',
        'printed',
        'pressed',
        'checked',
        'packed',
        'delivered',
        'reprint',
      ],
    },
    whole,
  ];
}
