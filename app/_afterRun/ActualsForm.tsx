import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import type { RunResult } from '@/lib/variances/runResult';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import {
  blanksUsedSchema,
  inkUsedSchema,
  type RunActual,
  runAmountSchema,
  sheetsUsedSchema,
} from '@/shared/schemas/runEvents';
import styles from './AfterRun.module.css';

type ActualsFormProps = Readonly<{
  workspace: ReadyWorkspace;
  runId: string;
  currency: string;
  today: string;
  result: RunResult;
}>;

interface Typed {
  readonly blanks: number | null;
  readonly blanksAmount: number | null;
  readonly sheets: number | null;
  readonly sheetsAmount: number | null;
  readonly ink: number | null;
  readonly freight: number | null;
  readonly otherCost: number | null;
  readonly fees: number | null;
  readonly reprints: number | null;
  readonly revenue: number | null;
}

const nothing: Typed = {
  ...{ blanks: null, blanksAmount: null, sheets: null, sheetsAmount: null, ink: null, freight: null },
  ...{ otherCost: null, fees: null, reprints: null, revenue: null },
};

const amounts = [
  ['blanksAmount', 'Paid for those blanks'],
  ['sheetsAmount', 'Paid for those sheets'],
  ['freight', 'Freight'],
  ['otherCost', 'Packaging, drive and the rest'],
  ['fees', 'Fees'],
  ['reprints', 'Reprints'],
  ['revenue', 'Brought in, without tax'],
] as const;

/** What was used and what it cost. What is left empty is as before: counted, or as planned. */
export function ActualsForm({ workspace, runId, currency, today, result }: ActualsFormProps) {
  const [typed, setTyped] = useState(nothing);
  const [problem, setProblem] = useState<string | null>(null);
  const set = (field: keyof Typed) => (value: number | null) =>
    setTyped((now) => ({ ...now, [field]: value }));
  const { actuals } = result;
  const missing = missingOf(typed);
  const enter = () => {
    const entries = actualsOf(typed, currency).map((actual) => ({
      kind: 'runActual' as const,
      body: { runId, day: today, currency, actual },
    }));
    const outcome = workspace.note('What the run took', entries);
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    if (outcome.state === 'shown') setTyped(nothing);
  };
  return (
    <EntryForm label="What the run took" className={styles.form} missing={missing} onEnter={enter}>
      <NumberField
        label="Blanks used"
        unit="pieces"
        value={typed.blanks}
        {...numberLimits(blanksUsedSchema, ['quantity'])}
        width="narrow"
        hint={`now ${Math.round(actuals.blanks.quantity * 100) / 100}`}
        onCommit={set('blanks')}
      />
      <NumberField
        label="Sheets used"
        unit="sheets"
        value={typed.sheets}
        {...numberLimits(sheetsUsedSchema, ['quantity'])}
        width="narrow"
        hint={`now ${Math.round(actuals.sheets.quantity * 100) / 100}`}
        onCommit={set('sheets')}
      />
      <NumberField
        label="Ink"
        unit="mL"
        value={typed.ink}
        {...numberLimits(inkUsedSchema, ['mL'])}
        width="narrow"
        onCommit={set('ink')}
      />
      {amounts.map(([field, label]) => (
        <AmountField
          key={field}
          {...{ label, currency }}
          value={typed[field]}
          minorLimits={numberLimits(runAmountSchema, ['amountMinor'])}
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

function missingOf(typed: Typed): string | undefined {
  if (typed.blanksAmount !== null && typed.blanks === null) return 'How many blanks that was for is missing.';
  if (typed.sheetsAmount !== null && typed.sheets === null) return 'How many sheets that was for is missing.';
  return Object.values(typed).every((value) => value === null) ? 'Nothing is typed yet.' : undefined;
}

function actualsOf(typed: Typed, currency: string): readonly RunActual['actual'][] {
  const minor = (amount: number | null) => (amount === null ? null : toMinor(amount, currency));
  const { blanks, sheets, ink } = typed;
  return [
    ...(blanks === null
      ? []
      : [{ of: 'blanks' as const, quantity: blanks, amountMinor: minor(typed.blanksAmount) }]),
    ...(sheets === null
      ? []
      : [{ of: 'sheets' as const, quantity: sheets, amountMinor: minor(typed.sheetsAmount) }]),
    ...(ink === null ? [] : [{ of: 'ink' as const, mL: ink }]),
    ...(['freight', 'otherCost', 'fees', 'reprints', 'revenue'] as const).flatMap((of) => {
      const amountMinor = minor(typed[of]);
      return amountMinor === null ? [] : [{ of, amountMinor }];
    }),
  ];
}
