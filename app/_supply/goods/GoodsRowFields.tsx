'use client';

import { useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { halfTyped, type OrderForm } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_supply/Supply.module.css';
import type { Formatter } from '@/app/_words/formatter';
import {
  deliveryMissing,
  foldedWords,
  goodsFaultWords,
  orderedWords,
  unitPriceTold,
} from '@/app/_words/supply/deliveryWords';
import { unitOf } from '@/app/_words/supply/itemWords';
import { paidEach } from '@/lib/stock/billedEach';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import type { Consumable } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { blanksNotedSchema } from '@/shared/schemas/stock';
import { goodsFaults } from '@/shared/tables/faults';
import table from './GoodsTable.module.css';
import type { GoodsRowDraft } from './goodsDraft';

type GoodsRowFieldsProps = Readonly<{
  row: GoodsRowDraft;
  form: OrderForm;
  name: string;
  unit: Consumable['unit'];
  /** What one was said to cost, in words; null where nobody knows. */
  expected: string | null;
  /** It was not on the order that this answers. */
  isUnordered: boolean;
  currency: string;
  formatter: Formatter;
  onChange: (change: Partial<GoodsRowDraft>) => void;
  /** Another lot of the same. */
  onSplit: (() => void) | null;
  onRemove: (() => void) | null;
}>;

const path = ['rows', 0] as const;
const { decimals } = numberLimits(blanksNotedSchema, []);
const wholePieces = decimals === undefined ? {} : { decimals };

/** One thing that came, in a line: what was ordered, how many came, for how much. Its lot and faults unfold. */
export function GoodsRowFields(props: GoodsRowFieldsProps) {
  const { row, form, name, unit, expected, isUnordered, currency, formatter, onChange } = props;
  const { item, ordered, counted, faulty, amount } = row;
  const id = useId();
  const half = (field: string) => halfTyped(form, `${row.key} ${field}`);
  const [isOpened, setOpened] = useState(half('faulty').recall() !== null);
  const isBeyond = counted !== null && (faulty ?? 0) > counted;
  const isUnsaid = (faulty ?? 0) > 0 && row.fault === null;
  // What keeps the row from being noted is never folded away.
  const isOpen = isOpened || isBeyond || isUnsaid;
  const difference = Math.abs((ordered ?? 0) - (counted ?? 0));
  const each =
    amount !== null && counted !== null && counted > 0
      ? paidEach(toMinor(amount, currency) / counted, currency)
      : null;
  // What was ordered at that price is not told twice.
  const told = each === null ? null : formatter.smallMoney(each);
  const differs =
    ordered === null || counted === null || difference === 0
      ? undefined
      : `${formatter.number(difference)} ${counted < ordered ? 'fewer' : 'more'} than ordered.`;
  return (
    <fieldset className={table.row} aria-labelledby={`${id}-name`}>
      <div className={table.what}>
        <span id={`${id}-name`}>
          {name}
          {isUnordered && <span className={styles.caution}>: not ordered. It is kept, and marked.</span>}
        </span>
        {!isOpen && <span className={styles.quiet}>{foldedWords(row, formatter)}</span>}
      </div>
      <div className={table.ordered}>{orderedWords(ordered, unit, expected, formatter)}</div>
      <div>
        <label className="visuallyHidden" htmlFor={`${id}-counted`}>
          Counted
        </label>
        <NumberField
          id={`${id}-counted`}
          label="Counted"
          labelled
          width="full"
          unit={unit === 'piece' ? undefined : unitOf(unit, 2)}
          value={counted}
          half={half('counted')}
          {...numberLimits(goodsInSchema, [...path, 'counted'])}
          {...(item.kind === 'blank' ? wholePieces : {})}
          caution={differs}
          onCommit={(value) => onChange({ counted: value })}
        />
      </div>
      <div className={table.cost}>
        <label className="visuallyHidden" htmlFor={`${id}-cost`}>
          All counted cost
        </label>
        <AmountField
          id={`${id}-cost`}
          label="All counted cost"
          labelled
          currency={currency}
          minorLimits={numberLimits(goodsInSchema, [...path, 'amountMinor'])}
          value={amount}
          half={half('amount')}
          hint={told === null || told === expected ? undefined : unitPriceTold(told)}
          onCommit={(value) => onChange({ amount: value })}
        />
      </div>
      <Button
        kind="quiet"
        expanded={isOpen}
        spoken={`${item.kind === 'blank' ? 'Lot, faults' : 'Faults'} of ${name}`}
        onPress={() => setOpened(!isOpen)}
      >
        {item.kind === 'blank' ? 'Lot, faults' : 'Faults'}
      </Button>
      {isOpen && <Unfolded {...props} {...{ isBeyond, half }} />}
    </fieldset>
  );
}

// Helpers

type UnfoldedProps = GoodsRowFieldsProps &
  Readonly<{ isBeyond: boolean; half: (field: string) => ReturnType<typeof halfTyped> }>;

/** What most rows leave as it is. */
function Unfolded({ row, name, isBeyond, half, onChange, onSplit, onRemove }: UnfoldedProps) {
  const { item, faulty } = row;
  return (
    <div className={table.unfolded}>
      <FieldGroup pairs>
        <NumberField
          label="Faulty of them"
          width="narrow"
          value={faulty}
          half={half('faulty')}
          {...numberLimits(goodsInSchema, [...path, 'faulty'])}
          {...(item.kind === 'blank' ? wholePieces : {})}
          hint="Empty where none is."
          caution={isBeyond ? deliveryMissing.faultyBeyond(name) : undefined}
          onCommit={(value) => onChange({ faulty: value })}
        />
        {(faulty ?? 0) > 0 && (
          <ChoiceField
            label="What is wrong"
            value={row.fault}
            choices={goodsFaults.map((value) => ({ value, label: goodsFaultWords[value] }))}
            onCommit={(fault) => onChange({ fault })}
          />
        )}
        {item.kind === 'blank' && (
          <TextField
            label="Lot"
            width="narrow"
            value={row.lot}
            {...textLimits(goodsInSchema, [...path, 'lot'])}
            hint="May stay empty."
            onCommit={(lot) => onChange({ lot })}
          />
        )}
      </FieldGroup>
      <div className={styles.acts}>
        {onSplit !== null && (
          <Button kind="quiet" spoken={`Another lot of ${name}`} onPress={onSplit}>
            Another lot
          </Button>
        )}
        {onRemove !== null && (
          <Button kind="quiet" spoken={`Remove the row of ${name}`} onPress={onRemove}>
            Remove the row
          </Button>
        )}
      </div>
    </div>
  );
}
