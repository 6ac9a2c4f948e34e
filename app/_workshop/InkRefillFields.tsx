'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
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
  /** What is typed stays until it is shown as noted. */
  onNote: (refill: InkRefill) => { readonly state: string };
}>;

/** Ink that was poured in, as it is typed. */
export function InkRefillFields({ label, first, submit, onNote }: InkRefillFieldsProps) {
  const today = useToday();
  const [day, setDay] = useState<string | null>(first?.day ?? null);
  const [mL, setMl] = useState<number | null>(first?.mL ?? null);
  const on = day ?? today;
  const problem = inkDayProblem(on, today);
  const missing = mL === null ? 'How much was poured in comes first.' : problem;
  const note = () => {
    if (mL === null || onNote({ day: on, mL }).state !== 'shown') return;
    setMl(null);
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
      </FieldGroup>
      <Button type="submit" kind="strong" blockedBy={missing}>
        {submit}
      </Button>
    </EntryForm>
  );
}
