'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { newId } from '@/app/_documents/newId';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { itemLineWords, itemsAnswer, ofWhomWords } from '@/app/_words/orders/openItemWords';
import { mostEntries, textLimits } from '@/shared/limits';
import { type OpenItem, orderSchema } from '@/shared/schemas/order';
import { FoldedPart } from './FoldedPart';
import styles from './Jobs.module.css';

const ID = 'order-items';

/** What is still missing, of whom, and by when; ticked once it is there. */
export function OpenItemsSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, today, locale, formatter } = on;
  const change = (label: string, to: (items: readonly OpenItem[]) => readonly OpenItem[]) =>
    workspace.changeOrder(orderId, label, (now) => ({ ...now, openItems: [...to(now.openItems)] }));
  return (
    <FoldedPart id={ID} heading="Open items" answer={itemsAnswer(order.openItems)}>
      <RowList>
        {order.openItems.map((item) => (
          <ListRow
            key={item.id}
            acts={
              <Button
                kind="quiet"
                spoken={`Remove ${item.what}`}
                onPress={() => {
                  change(`Remove ${item.what}`, (items) => items.filter(({ id }) => id !== item.id));
                  focusById(`${ID}-part`);
                }}
              >
                Remove
              </Button>
            }
          >
            <CheckField
              label={item.what}
              checked={item.doneOn !== null}
              hint={itemLineWords(item, today, locale, formatter)}
              onCommit={(isDone) =>
                change(item.what, (items) =>
                  items.map((one) => (one.id === item.id ? { ...one, doneOn: isDone ? today : null } : one)),
                )
              }
            />
          </ListRow>
        ))}
      </RowList>
      <NewItem
        isFull={order.openItems.length >= mostEntries(orderSchema, ['openItems'])}
        onAdd={(item) => change(item.what, (items) => [...items, item]).state === 'shown'}
      />
    </FoldedPart>
  );
}

// Helpers

type NewItemProps = Readonly<{ isFull: boolean; onAdd: (item: OpenItem) => boolean }>;

function NewItem({ isFull, onAdd }: NewItemProps) {
  const [what, setWhat] = useState('');
  const [ofWhom, setOfWhom] = useState<OpenItem['ofWhom']>('customer');
  const [doneBy, setDoneBy] = useState<string | null>(null);
  const missing = isFull
    ? 'No more items fit here. Remove those that are done.'
    : what.trim() === ''
      ? 'What is missing comes first.'
      : undefined;
  return (
    <EntryForm
      className={styles.form}
      label="Open item"
      missing={missing}
      onEnter={() => {
        if (onAdd({ id: newId(), what: what.trim(), ofWhom, doneBy, doneOn: null })) setWhat('');
      }}
    >
      <FieldGroup>
        <TextField
          label="What is missing"
          value={what}
          {...textLimits(orderSchema, ['openItems', 0, 'what'])}
          hint="Such as the letter about the crest."
          onCommit={setWhat}
        />
        <ChoiceField label="Of whom" value={ofWhom} choices={choicesOf(ofWhomWords)} onCommit={setOfWhom} />
        <DateField
          label="Done by"
          width="narrow"
          value={doneBy}
          hint="May stay empty."
          onCommit={setDoneBy}
        />
      </FieldGroup>
      <Button type="submit" blockedBy={missing}>
        Add it
      </Button>
    </EntryForm>
  );
}
