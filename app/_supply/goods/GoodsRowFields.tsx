'use client';

import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_supply/Supply.module.css';
import type { Formatter } from '@/app/_words/formatter';
import { deliveryMissing, goodsFaultWords, unitPriceTold } from '@/app/_words/supply/deliveryWords';
import { unitOf } from '@/app/_words/supply/itemWords';
import { paidEach } from '@/lib/stock/billedEach';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import type { Consumable } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { blanksNotedSchema } from '@/shared/schemas/stock';
import { goodsFaults } from '@/shared/tables/faults';
import type { GoodsRowDraft } from './goodsDraft';

type GoodsRowFieldsProps = Readonly<{
  row: GoodsRowDraft;
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

/** One thing that came: how many, how many of them faulty, from which lot, for how much. */
export function GoodsRowFields(props: GoodsRowFieldsProps) {
  const { row, name, unit, expected, isUnordered, currency, formatter, onChange, onSplit, onRemove } = props;
  const { item, ordered, counted, faulty, amount } = row;
  // Pieces of a blank are noted whole.
  const whole = item.kind === 'blank' ? wholePieces : {};
  const isFewer = ordered !== null && counted !== null && counted < ordered;
  const isBeyond = counted !== null && (faulty ?? 0) > counted;
  const isMore = ordered !== null && counted !== null && counted > ordered;
  const difference = Math.abs((ordered ?? 0) - (counted ?? 0));
  const each =
    amount !== null && counted !== null && counted > 0
      ? paidEach(toMinor(amount, currency) / counted, currency)
      : null;
  return (
    <fieldset className={styles.set}>
      <legend>
        {name}
        {isUnordered && <span className={styles.caution}>: not ordered. It is kept, and marked.</span>}
      </legend>
      <FieldGroup pairs>
        <NumberField
          label="Counted"
          width="narrow"
          unit={unitOf(unit, 2)}
          value={counted}
          {...numberLimits(goodsInSchema, [...path, 'counted'])}
          {...whole}
          hint={ordered === null ? undefined : `${formatter.number(ordered)} ordered.`}
          caution={
            isFewer
              ? `${formatter.number(difference)} fewer than ordered.`
              : isMore
                ? `${formatter.number(difference)} more than ordered.`
                : undefined
          }
          onCommit={(value) => onChange({ counted: value })}
        />
        <NumberField
          label="Faulty of them"
          width="narrow"
          value={faulty}
          {...numberLimits(goodsInSchema, [...path, 'faulty'])}
          {...whole}
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
        <AmountField
          label="All counted cost"
          currency={currency}
          minorLimits={numberLimits(goodsInSchema, [...path, 'amountMinor'])}
          value={amount}
          hint={
            each === null
              ? expected === null
                ? 'As billed, without freight.'
                : `As billed, without freight; ${expected} each by the offer.`
              : unitPriceTold(formatter.smallMoney(each))
          }
          onCommit={(value) => onChange({ amount: value })}
        />
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
    </fieldset>
  );
}
