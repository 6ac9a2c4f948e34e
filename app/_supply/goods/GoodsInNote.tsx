'use client';

import { useState } from 'react';
import { type FileDraft, OneFile } from '@/app/_attachments/OneFile';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { itemChoices } from '@/app/_supply/itemChoices';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import type { OpenOrder, SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { useTaken } from '@/app/_supply/useTaken';
import { itemWords } from '@/app/_words/supply/itemWords';
import { goodsInEntries } from '@/lib/buying/received/goodsInEntries';
import { offerEach } from '@/lib/buying/received/offerEach';
import { sameItem } from '@/lib/stock/stockKey';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { orderNumberText } from '@/shared/orderNumberText';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { GoodsRowFields } from './GoodsRowFields';
import { answering, type GoodsRowDraft, goodsMissing, goodsRows, uncounted } from './goodsDraft';

type GoodsInNoteProps = Readonly<{
  supply: SupplyOnScreen;
  /** What it answers to begin with; null where that is chosen here. */
  order?: OpenOrder | null;
  supplierId?: string | null;
  /** What is expected without an order, such as the rows of a buying list. */
  wanted?: readonly { readonly item: SupplyItem; readonly quantity: number }[];
  onDone: () => void;
}>;

const NONE = 'none';

/** What a supplier sent, counted: one step writes the delivery and what of it lies at home. */
export function GoodsInNote({
  supply,
  order = null,
  supplierId = null,
  wanted = [],
  onDone,
}: GoodsInNoteProps) {
  const { workspace, today, formatter, nameOf, openOrders } = supply;
  const { currency } = workspace.workshop;
  const [day, setDay] = useState(today);
  const [supplier, setSupplier] = useState(order?.order.body.supplierId ?? supplierId);
  const [answered, setAnswered] = useState<OpenOrder | null>(order);
  const [rows, setRows] = useState<readonly GoodsRowDraft[]>(() =>
    rowsOf(order?.toCome ?? wanted, order !== null),
  );
  const [freight, setFreight] = useState<number | null>(null);
  const [receipt, setReceipt] = useState<FileDraft | null>(null);
  const [note, setNote] = useState('');
  const [adding, setAdding] = useState<string | null>(null);
  const { problem, taken } = useTaken();
  const choices = itemChoices(workspace);
  const added = choices.find(({ value }) => value === adding)?.item;
  const offered = supplier === null ? [] : openOrders.filter((one) => one.order.body.supplierId === supplier);
  const missing = goodsMissing(rows, nameOf);
  const change = (key: string, part: Partial<GoodsRowDraft>) =>
    setRows((now) => now.map((row) => (row.key === key ? { ...row, ...part } : row)));
  const answer = (next: OpenOrder | null) => {
    setAnswered(next);
    setRows((now) => answering(now, rowsOf(next?.toCome ?? [], true)));
  };
  const enter = () => {
    const body = goodsInSchema.parse({
      ...{ day, currency, supplierId: supplier, supplyOrderId: answered?.order.id ?? null },
      rows: goodsRows(rows, currency),
      freightMinor: freight === null ? null : toMinor(freight, currency),
      receipt: receipt?.attachment ?? null,
      note,
    });
    const from = supplier === null ? '' : ` from ${supply.supplierName(supplier)}`;
    const files = receipt === null ? [] : [receipt.file];
    if (taken(workspace.note(`Goods in${from}`, goodsInEntries(body), [], files))) onDone();
  };
  return (
    <EntryForm label="Goods in" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        <DateField label="Came on" width="narrow" needed value={day} onCommit={(to) => setDay(to ?? today)} />
        {order === null && (
          <ChoiceField
            label="From"
            value={supplier ?? NONE}
            choices={[
              { value: NONE, label: 'No supplier named' },
              ...Object.entries(workspace.suppliers).map(([value, { name }]) => ({ value, label: name })),
            ]}
            onCommit={(value) => {
              setSupplier(value === NONE ? null : value);
              if (answered !== null) answer(null);
            }}
          />
        )}
        {order === null && offered.length > 0 && (
          <ChoiceField
            label="Answers the order"
            value={answered?.order.id ?? NONE}
            choices={[
              { value: NONE, label: 'None of them' },
              ...offered.map((one) => ({
                value: one.order.id,
                label: `${orderNumberText(one.order.body.number)} of ${formatter.day(one.order.body.issuedOn)}`,
              })),
            ]}
            onCommit={(id) => answer(offered.find((one) => one.order.id === id) ?? null)}
          />
        )}
      </FieldGroup>
      {rows.map((row) => {
        const each = offerEach(
          workspace.suppliers[supplier ?? ''],
          row.item,
          row.counted ?? row.ordered ?? 1,
        );
        const isOfOrder = row.ordered !== null;
        return (
          <GoodsRowFields
            key={row.key}
            {...{ row, currency, formatter }}
            name={nameOf(row.item)}
            unit={itemWords(row.item, workspace).unit}
            expected={each === null ? null : formatter.smallMoney(each)}
            isUnordered={answered !== null && !isOfOrder && !isSecond(rows, row)}
            onChange={(part) => change(row.key, part)}
            onSplit={
              row.item.kind === 'blank'
                ? () => setRows((now) => [...now, uncounted(newId(), row.item, null)])
                : null
            }
            onRemove={isOfOrder ? null : () => setRows((now) => now.filter(({ key }) => key !== row.key))}
          />
        );
      })}
      {rows.some(({ ordered, counted }) => ordered !== null && counted === null) && (
        <div className={styles.acts}>
          <Button
            onPress={() =>
              setRows((now) => now.map((row) => ({ ...row, counted: row.counted ?? row.ordered })))
            }
          >
            All others came as ordered
          </Button>
        </div>
      )}
      <div className={styles.adding}>
        <ChoiceField
          label={rows.length === 0 ? 'What came' : 'Something else that came'}
          value={adding}
          choices={choices.map(({ value, label, group }) => ({ value, label, group }))}
          onCommit={setAdding}
        />
        <Button
          blockedBy={added === undefined ? 'What came comes first.' : undefined}
          onPress={() => {
            if (added === undefined) return;
            setRows((now) => [...now, uncounted(newId(), added, null)]);
            setAdding(null);
          }}
        >
          Add a row
        </Button>
      </div>
      <FieldGroup>
        <AmountField
          label="Freight"
          currency={currency}
          minorLimits={numberLimits(goodsInSchema, ['freightMinor'])}
          value={freight}
          hint="As billed. Empty where you do not know."
          onCommit={setFreight}
        />
        <TextField label="Note" value={note} {...textLimits(goodsInSchema, ['note'])} onCommit={setNote} />
      </FieldGroup>
      <OneFile label="The bill or receipt" purpose="receipt" value={receipt} onChange={setReceipt} />
      <div className={styles.acts}>
        <Button type="submit" kind="strong" blockedBy={missing}>
          Note the goods in
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
        <NotTaken problem={problem} />
      </div>
    </EntryForm>
  );
}

// Helpers

const rowsOf = (
  things: readonly { readonly item: SupplyItem; readonly quantity: number }[],
  isOrdered: boolean,
): readonly GoodsRowDraft[] =>
  things.map(({ item, quantity }) => uncounted(newId(), item, isOrdered || quantity > 0 ? quantity : null));

/** Another lot of what another row is of. */
const isSecond = (rows: readonly GoodsRowDraft[], row: GoodsRowDraft): boolean =>
  rows.some((other) => other.key !== row.key && other.ordered !== null && sameItem(other.item, row.item));
