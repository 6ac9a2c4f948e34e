'use client';

import { OneFile } from '@/app/_attachments/OneFile';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import type { OpenOrder, SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { useTaken } from '@/app/_supply/useTaken';
import { goodsInEntries } from '@/lib/buying/received/goodsInEntries';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { orderNumberText } from '@/shared/orderNumberText';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { GoodsRows } from './GoodsRows';
import { goodsMissing, goodsRows } from './goodsDraft';
import { useGoodsDraft } from './useGoodsDraft';

type GoodsInNoteProps = Readonly<{
  supply: SupplyOnScreen;
  /** Where what is typed is remembered until it is noted. */
  form: OrderForm;
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
  form,
  order = null,
  supplierId = null,
  wanted = [],
  onDone,
}: GoodsInNoteProps) {
  const { workspace, today, formatter, nameOf, openOrders } = supply;
  const { currency } = workspace.workshop;
  const draft = useGoodsDraft(form, supply, { order, supplierId, wanted });
  const { day, supplier, answered, rows, freight, receipt, note } = draft;
  const { problem, taken } = useTaken();
  const offered = supplier === null ? [] : openOrders.filter((one) => one.order.body.supplierId === supplier);
  const missing = goodsMissing(rows, nameOf);
  const done = () => {
    formMemory.forget(form);
    onDone();
  };
  const enter = () => {
    const body = goodsInSchema.parse({
      ...{ day, currency, supplierId: supplier, supplyOrderId: answered?.order.id ?? null },
      rows: goodsRows(rows, currency),
      freightMinor: freight.value === null ? null : toMinor(freight.value, currency),
      receipt: receipt?.attachment ?? null,
      note: note.value,
    });
    const from = supplier === null ? '' : ` from ${supply.supplierName(supplier)}`;
    const files = receipt === null ? [] : [receipt.file];
    if (taken(workspace.note(`Goods in${from}`, goodsInEntries(body), [], files))) done();
  };
  return (
    <EntryForm label="Goods in" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        <DateField
          label="Came on"
          width="narrow"
          needed
          value={day}
          onCommit={(to) => draft.setDay(to ?? today)}
        />
        {order === null && (
          <ChoiceField
            label="From"
            value={supplier ?? NONE}
            choices={[
              { value: NONE, label: 'No supplier named' },
              ...Object.entries(workspace.suppliers).map(([value, { name }]) => ({ value, label: name })),
            ]}
            onCommit={(value) => {
              draft.setSupplier(value === NONE ? null : value);
              if (answered !== null) draft.answer(null);
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
            onCommit={(id) => draft.answer(offered.find((one) => one.order.id === id) ?? null)}
          />
        )}
      </FieldGroup>
      <GoodsRows {...{ supply, form, draft }} />
      <FieldGroup pairs>
        <AmountField
          label="Freight"
          currency={currency}
          minorLimits={numberLimits(goodsInSchema, ['freightMinor'])}
          {...freight}
          hint="As billed. Empty where you do not know."
        />
        <TextField label="Note" {...note} {...textLimits(goodsInSchema, ['note'])} />
      </FieldGroup>
      <OneFile label="The bill or receipt" purpose="receipt" value={receipt} onChange={draft.setReceipt} />
      <div className={styles.acts}>
        <Button type="submit" kind="strong" blockedBy={missing}>
          Note the goods in
        </Button>
        <Button kind="quiet" onPress={done}>
          Leave it
        </Button>
        <NotTaken problem={problem} />
      </div>
    </EntryForm>
  );
}
