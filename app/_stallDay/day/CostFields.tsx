'use client';

import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { costAmountChoices, costKindChoices } from '@/app/_words/stall/dayWords';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type StallCost, stallDaySchema } from '@/shared/schemas/stallDay';
import { currencyDigits } from '@/shared/tables/currencies';
import styles from './Day.module.css';

const most = mostEntries(stallDaySchema, ['costs']);
/** What the day costs whatever is sold, each saved by staying at home or not. */
export function CostFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set } = on;
  const { costs } = stallDay;
  return (
    <div className={styles.rows} id={stallFieldId(['costs'])}>
      {costs.map((cost, at) => (
        <CostRow key={cost.id} {...{ on, cost, at }} />
      ))}
      <div>
        <Button
          blockedBy={costs.length >= most ? `${most} costs are the most there can be.` : undefined}
          onPress={() => {
            typing.ends();
            set('Add a cost', ['costs', costs.length], freshCost(costs.length === 0));
          }}
        >
          Add a cost
        </Button>
      </div>
    </div>
  );
}

// Helpers

/** The first is the fee of the stall, by which a fair is measured. */
const freshCost = (isFirst: boolean): StallCost => ({
  id: newId(),
  what: isFirst ? 'Stall fee' : 'Cost',
  amount: { of: 'typed', money: null },
  kind: isFirst ? 'sunk' : 'avoidable',
  isStallFee: isFirst,
  paidOn: null,
});

type CostRowProps = Readonly<{ on: StallOnScreen; cost: StallCost; at: number }>;

function CostRow({ on: { set, change, reader }, cost, at }: CostRowProps) {
  const { id, what, amount, kind, isStallFee, paidOn } = cost;
  const path = ['costs', at] as const;
  const remove = () => {
    typing.ends();
    change(`Remove ${what}`, (now) => ({ ...now, costs: now.costs.filter((one) => one.id !== id) }));
  };
  return (
    <div className={styles.row}>
      <TextField
        label="What"
        needed
        value={what}
        {...textLimits(stallDaySchema, ['costs', 0, 'what'])}
        onCommit={(to) => set('Name of a cost', [...path, 'what'], to)}
      />
      <ChoiceField
        label="Told as"
        width="narrow"
        value={amount.of}
        choices={costAmountChoices}
        onCommit={(of) =>
          set(`${what} told as`, [...path, 'amount'], of === 'typed' ? { of, money: null } : { of, km: null })
        }
      />
      {amount.of === 'typed' ? (
        <NumberField
          label="How much"
          id={stallFieldId([...path, 'amount'])}
          width="narrow"
          unit={reader.currency}
          minDecimals={currencyDigits(reader.currency) ?? 0}
          value={amount.money}
          {...numberLimits(stallDaySchema, ['costs', 0, 'amount', 'money'])}
          whenEmpty="Until it is told there is no plan."
          onCommit={(to) => set(what, [...path, 'amount', 'money'], to)}
        />
      ) : (
        <MeasureField
          label="There and back"
          id={stallFieldId([...path, 'amount'])}
          width="narrow"
          kind="distance"
          value={amount.km}
          {...numberLimits(stallDaySchema, ['costs', 0, 'amount', 'km'])}
          whenEmpty="Until it is told there is no plan."
          onCommit={(to) => set(what, [...path, 'amount', 'km'], to)}
        />
      )}
      <ChoiceField
        label="If you stay home"
        value={kind}
        choices={costKindChoices}
        onCommit={(to) => set(`${what}, if you stay home`, [...path, 'kind'], to)}
      />
      <DateField
        label="Paid on"
        id={stallFieldId([...path, 'paidOn'])}
        width="narrow"
        value={paidOn}
        onCommit={(to) => set(`${what}, paid on`, [...path, 'paidOn'], to)}
      />
      <CheckField
        label="Fee of the stall"
        checked={isStallFee}
        onCommit={(to) => set(`${what}, fee of the stall`, [...path, 'isStallFee'], to)}
      />
      <Button kind="quiet" spoken={`Remove ${what}`} onPress={remove}>
        Remove
      </Button>
    </div>
  );
}
