'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { numberLimits, textLimits } from '@/shared/limits';
import { type InkPrints, inkPrintsSchema } from '@/shared/schemas/entries';
import styles from './InkRecord.module.css';
import { inkDayProblem } from './inkDayProblem';

interface Draft {
  readonly name: string;
  readonly day: string | null;
  readonly prints: number | null;
  readonly total: number | null;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly sessions: number | null;
}

const empty: Draft = {
  name: '',
  day: null,
  prints: null,
  total: null,
  widthMm: null,
  heightMm: null,
  sessions: 1,
};

type InkRunFieldsProps = Readonly<{
  label: string;
  /** What is corrected; null for new ones. */
  first: InkPrints | null;
  submit: string;
  /** What is typed stays until it is shown as noted. */
  onNote: (prints: InkPrints) => { readonly state: string };
}>;

/** What was printed, as it is typed. */
export function InkRunFields({ label, first, submit, onNote }: InkRunFieldsProps) {
  const today = useToday();
  const [draft, setDraft] = useState<Draft>(first ?? empty);
  const put = (part: Partial<Draft>) => setDraft((now) => ({ ...now, ...part }));
  const on = draft.day ?? today;
  const problem = inkDayProblem(on, today);
  const { prints, total, widthMm, heightMm, sessions } = draft;
  const known =
    prints !== null && total !== null && widthMm !== null && heightMm !== null && sessions !== null
      ? { prints, total, widthMm, heightMm, sessions }
      : null;
  const missing =
    known === null
      ? 'Prints, ink, size and sessions are needed: without one of them it tells nothing.'
      : problem;
  const note = () => {
    if (known === null) return;
    const name = draft.name.trim() === '' ? 'Prints by hand' : draft.name.trim();
    const outcome = onNote({ day: on, name, ...known, jobId: first?.jobId ?? null });
    if (outcome.state === 'shown') setDraft(empty);
  };
  return (
    <EntryForm className={styles.form} label={label} missing={missing} onEnter={note}>
      <FieldGroup>
        <TextField
          label="What was printed"
          value={draft.name}
          {...textLimits(inkPrintsSchema, ['name'])}
          onCommit={(name) => put({ name })}
        />
        <DateField label="On" width="narrow" value={on} issue={problem} onCommit={(day) => put({ day })} />
      </FieldGroup>
      <FieldGroup pairs>
        <NumberField
          label="Prints"
          width="narrow"
          value={prints}
          {...numberLimits(inkPrintsSchema, ['prints'])}
          hint="Spoiled ones too."
          onCommit={(value) => put({ prints: value })}
        />
        <MeasureField
          label="Ink, all channels"
          kind="share"
          width="narrow"
          value={total}
          {...numberLimits(inkPrintsSchema, ['total'])}
          hint="100 % is one channel covering fully."
          onCommit={(value) => put({ total: value })}
        />
        <MeasureField
          label="Width"
          kind="length"
          width="narrow"
          value={widthMm}
          {...numberLimits(inkPrintsSchema, ['widthMm'])}
          onCommit={(value) => put({ widthMm: value })}
        />
        <MeasureField
          label="Height"
          kind="length"
          width="narrow"
          value={heightMm}
          {...numberLimits(inkPrintsSchema, ['heightMm'])}
          onCommit={(value) => put({ heightMm: value })}
        />
        <NumberField
          label="Sessions"
          width="narrow"
          value={sessions}
          {...numberLimits(inkPrintsSchema, ['sessions'])}
          hint="0 where another entry has it."
          onCommit={(value) => put({ sessions: value })}
        />
      </FieldGroup>
      <Button type="submit" kind="strong" blockedBy={missing}>
        {submit}
      </Button>
    </EntryForm>
  );
}
