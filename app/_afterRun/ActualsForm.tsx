import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { formMemory, halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { useTyped } from '@/app/_fields/useTyped';
import { actualWords } from '@/app/_words/afterRun/actualWords';
import type { Formatter } from '@/app/_words/formatter';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import { metresEach } from '@/lib/variances/metresEach';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import {
  blanksUsedSchema,
  inkUsedSchema,
  type RunActual,
  runAmountSchema,
  sheetsUsedSchema,
} from '@/shared/schemas/making/runEvents';
import { z } from '@/shared/schemas/z';
import styles from './AfterRun.module.css';
import type { AfterRunOnScreen } from './afterRunOnScreen';

const goods = {
  blanks: { unit: 'pieces', ...numberLimits(blanksUsedSchema, ['quantity']) },
  sheets: { unit: 'sheets', ...numberLimits(sheetsUsedSchema, ['quantity']) },
  ink: { unit: 'mL', ...numberLimits(inkUsedSchema, ['mL']) },
} as const;
type Goods = keyof typeof goods;

const paidFor = { blanks: 'blanksAmount', sheets: 'sheetsAmount' } as const;
const money = ['freight', 'otherCost', 'fees', 'reprints', 'revenue'] as const;
type Amount = (typeof money)[number] | (typeof paidFor)[keyof typeof paidFor];

const amount = z.number().nullable().exactOptional();
/** What is typed about one subject; left out is not typed. */
const typedSchema = z.strictObject({
  ...{ blanks: amount, blanksAmount: amount, sheets: amount, sheetsAmount: amount, ink: amount },
  ...{ freight: amount, otherCost: amount, fees: amount, reprints: amount, revenue: amount },
});
type Typed = z.infer<typeof typedSchema>;

const NOTHING: Typed = {};

type ActualsFormProps = Readonly<{ on: AfterRunOnScreen; about: Goods | 'money' }>;

/** What was used of one thing and what it cost. What is left empty is as before: counted, or as planned. */
export function ActualsForm({ on, about }: ActualsFormProps) {
  const { workspace, figures, result, standard, formatter } = on;
  const form = { orderId: figures.facts.runId, name: `after ${about}`, isErased: false };
  const [typed, setTyped] = useTyped(form, 'typed', typedSchema, NOTHING);
  const [problem, setProblem] = useState<string | null>(null);
  const { currency } = result;
  const set = (field: Goods | Amount) => (value: number | null) => setTyped({ ...typed, [field]: value });
  const missing = missingOf(typed);
  const roll = metresEach(on.standard.body.works);
  const enter = () => {
    const entries = actualsOf({ ...typed, sheets: sheetsOf(typed.sheets, roll) }, currency).map((actual) => ({
      kind: 'runActual' as const,
      body: { runId: figures.facts.runId, day: figures.today, currency, actual },
    }));
    const outcome = workspace.note(actualWords.noted, entries);
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    if (outcome.state !== 'shown') return;
    setTyped(NOTHING);
    formMemory.forget(form);
  };
  const amounts: readonly Amount[] = about === 'money' ? money : about === 'ink' ? [] : [paidFor[about]];
  return (
    <EntryForm label={actualWords.forms[about]} className={styles.form} missing={missing} onEnter={enter}>
      {about !== 'money' && (
        <NumberField
          label={actualWords.used[about]}
          value={typed[about] ?? null}
          {...goods[about]}
          width="narrow"
          hint={actualWords.now(about, result.actuals[about].quantity, formatter)}
          caution={about === 'blanks' ? cautionOf(typed.blanks ?? null, standard, formatter) : undefined}
          half={halfTyped(form, about)}
          {...(about === 'sheets' && roll !== null ? rollField(roll, on) : {})}
          onCommit={set(about)}
        />
      )}
      {amounts.map((field) => (
        <AmountField
          key={field}
          label={actualWords.amounts[field]}
          currency={currency}
          value={typed[field] ?? null}
          minorLimits={numberLimits(runAmountSchema, ['amountMinor'])}
          half={halfTyped(form, field)}
          onCommit={set(field)}
        />
      ))}
      <div className={styles.ends}>
        <Button type="submit" blockedBy={missing}>
          Note it
        </Button>
        {problem !== null && <p role="alert">{problem}</p>}
      </div>
    </EntryForm>
  );
}

// Helpers

/** More blanks than were laid out are kept, and asked about while they are typed. */
function cautionOf(
  blanks: number | null,
  { body }: AfterRunOnScreen['standard'],
  { number }: Formatter,
): string | undefined {
  const { take } = frozenPlan(body);
  return blanks !== null && blanks > take ? actualWords.moreThanLaidOut(number(take)) : undefined;
}

/** A roll is typed by its length; the entry counts it in sheets, as the standard does. */
const rollField = (each: number, { result, formatter }: AfterRunOnScreen) => ({
  ...{ label: actualWords.rollUsed, unit: 'm', max: (goods.sheets.max ?? 1e6) * each },
  hint: `now ${formatter.number(result.actuals.sheets.quantity * each, 2)}`,
});

const sheetsOf = (typed: number | null | undefined, roll: number | null): number | null =>
  typed == null || roll === null ? (typed ?? null) : typed / roll;

function missingOf(typed: Typed): string | undefined {
  if (typed.blanksAmount != null && typed.blanks == null) return actualWords.missing.blanks;
  if (typed.sheetsAmount != null && typed.sheets == null) return actualWords.missing.sheets;
  return Object.values(typed).every((value) => value === null) ? actualWords.missing.all : undefined;
}

function actualsOf(typed: Typed, currency: string): readonly RunActual['actual'][] {
  const minor = (amount: number | null | undefined) => (amount == null ? null : toMinor(amount, currency));
  const { blanks, sheets, ink } = typed;
  const used = (of: 'blanks' | 'sheets', quantity: number | null | undefined) =>
    quantity == null ? [] : [{ of, quantity, amountMinor: minor(typed[paidFor[of]]) }];
  return [
    ...used('blanks', blanks),
    ...used('sheets', sheets),
    ...(ink == null ? [] : [{ of: 'ink' as const, mL: ink }]),
    ...money.flatMap((of) => {
      const amountMinor = minor(typed[of]);
      return amountMinor === null ? [] : [{ of, amountMinor }];
    }),
  ];
}
