'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { numberLimits } from '@/shared/limits';
import { type InkRefill, inkRefillSchema } from '@/shared/schemas/entries';
import styles from './InkRecord.module.css';
import { inkDayProblem } from './inkDayProblem';

/** A desktop printer's tanks hold less than this in all; from memory. */
const MUCH_ML = 1000;

type InkRefillFieldsProps = Readonly<{
  label: string;
  /** What is corrected; null for a new one. */
  first: InkRefill | null;
  submit: string;
  /** Days on which prints are noted. */
  printDays: ReadonlySet<string>;
  /** What is typed stays until it is shown as noted. */
  onNote: (refill: InkRefill) => { readonly state: string };
}>;

/** Ink that was poured in, as it is typed. */
export function InkRefillFields({ label, first, submit, printDays, onNote }: InkRefillFieldsProps) {
  const today = useToday();
  const [day, setDay] = useState<string | null>(first?.day ?? null);
  const [mL, setMl] = useState<number | null>(first?.mL ?? null);
  const [turn, setTurn] = useState<Turn | null>(first === null ? null : turnOf(first));
  const on = day ?? today;
  // Filled up today with no prints noted yet: most likely to print now.
  const shownTurn = turn ?? (on === today && !printDays.has(on) ? 'before' : 'after');
  const problem = inkDayProblem(on, today);
  const missing = mL === null ? 'How much was poured in comes first.' : problem;
  const note = () => {
    if (mL === null) return;
    const outcome = onNote({ day: on, mL, ...(shownTurn === 'before' && { beforePrints: true }) });
    if (outcome.state !== 'shown') return;
    setMl(null);
    setTurn(null);
    setDay(null);
  };
  return (
    <EntryForm className={styles.form} label={label} missing={missing} onEnter={note}>
      <FieldGroup pairs>
        <MeasureField
          label="Poured in, all colours"
          kind="volume"
          width="narrow"
          value={mL}
          {...numberLimits(inkRefillSchema, ['mL'])}
          caution={
            mL !== null && mL > MUCH_ML
              ? 'More than the tanks of a desktop printer hold. Is the decimal mark where it belongs?'
              : undefined
          }
          onCommit={setMl}
        />
        <DateField label="On" width="narrow" value={on} issue={problem} onCommit={setDay} />
        <ChoiceField<Turn>
          label="When"
          value={shownTurn}
          choices={turns}
          hint="Settles which refill the prints of this day count to."
          onCommit={setTurn}
        />
      </FieldGroup>
      <Button type="submit" kind="strong" blockedBy={missing}>
        {submit}
      </Button>
    </EntryForm>
  );
}

// Helpers

type Turn = 'before' | 'after';

const turns: readonly { readonly value: Turn; readonly label: string }[] = [
  { value: 'before', label: 'before the day’s prints' },
  { value: 'after', label: 'after the day’s prints' },
];

const turnOf = ({ beforePrints }: InkRefill): Turn => (beforePrints === true ? 'before' : 'after');
