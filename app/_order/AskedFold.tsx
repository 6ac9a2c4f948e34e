'use client';

import { Fold } from '@/app/_controls/Fold';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { numberLimits, textLimits } from '@/shared/limits';
import { orderSchema } from '@/shared/schemas/order';
import { CustomerFields } from './CustomerFields';
import { DeliveryFields } from './DeliveryFields';
import styles from './OrderRoom.module.css';
import type { OrderOnScreen } from './orderOnScreen';

/** What they asked for, for when, where they heard of the workshop, how it gets to them. */
export function AskedFold({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, today } = on;
  const set = (key: keyof typeof labels, value: unknown) =>
    void workspace.setField({ kind: 'order', id: orderId }, labels[key], [key], value);
  const isPast = order.wantedOn !== null && order.wantedOn < today;
  return (
    <div className={styles.asked}>
      <Fold
        summary="What was asked"
        line={shortly(order.asked) || 'customer, day, wish, delivery'}
        id="order-asked"
        holds={['order-customer', 'order-wanted']}
      >
        <div className={styles.fields}>
          <CustomerFields on={on} />
          <FieldGroup>
            <DateField
              id="order-wanted"
              label={labels.wantedOn}
              width="narrow"
              // Its own: elsewhere the day of its jobs stands where it has none.
              value={workspace.kinds.order.bodies[orderId]?.wantedOn ?? null}
              caution={isPast ? 'This day is past: nothing can be promised for it.' : undefined}
              onCommit={(value) => set('wantedOn', value)}
            />
            <NumberField
              label={labels.askedPieces}
              width="narrow"
              value={order.askedPieces}
              {...numberLimits(orderSchema, ['askedPieces'])}
              hint="About how many, as they said it."
              onCommit={(value) => set('askedPieces', value)}
            />
            <TextField
              label={labels.heardFrom}
              value={order.heardFrom}
              {...textLimits(orderSchema, ['heardFrom'])}
              onCommit={(value) => set('heardFrom', value)}
            />
          </FieldGroup>
          <TextField
            label={labels.asked}
            width="full"
            rows={3}
            value={order.asked}
            {...textLimits(orderSchema, ['asked'])}
            onCommit={(value) => set('asked', value)}
          />
          <TextField
            label={labels.note}
            width="full"
            rows={3}
            value={order.note}
            {...textLimits(orderSchema, ['note'])}
            hint="For you alone: it stands on no paper."
            onCommit={(value) => set('note', value)}
          />
          <DeliveryFields on={on} />
        </div>
      </Fold>
    </div>
  );
}

// Helpers

const MOST_LETTERS = 80;

/** The beginning of a long text, up to a whole word. */
function shortly(text: string): string {
  const letters = [...text];
  if (letters.length <= MOST_LETTERS) return text;
  return `${letters
    .slice(0, MOST_LETTERS - 1)
    .join('')
    .replace(/\s+\S*$/, '')}…`;
}

const labels = {
  wantedOn: 'Wanted on',
  askedPieces: 'Pieces asked for',
  heardFrom: 'Heard of you from',
  asked: 'What they asked for',
  note: 'Note',
} as const;
