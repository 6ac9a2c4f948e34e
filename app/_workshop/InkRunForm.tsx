'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { newId } from '@/app/_documents/newId';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from './InkRecord.module.css';
import { inkDayProblem } from './inkDayProblem';
import type { WorkshopFields } from './workshopFields';

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

/** A short form for what was printed outside of any job here; a job's own prints are noted on its docket. */
export function InkRunForm({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const today = useToday();
  const [draft, setDraft] = useState(empty);
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
  const add = () => {
    if (known === null) return;
    const name = draft.name.trim() === '' ? 'Prints by hand' : draft.name.trim();
    fields.workspace.changeWorkshop(`${name}, noted`, (now) => ({
      ...now,
      inkRecord: {
        ...now.inkRecord,
        runs: [...now.inkRecord.runs, { id: newId(), day: on, name, ...known }],
      },
    }));
    setDraft(empty);
  };
  return (
    <Disclosure
      id="ink-run"
      level={4}
      heading="Note prints by hand"
      line="a job’s own prints are noted on its docket, under its sheets"
    >
      <EntryForm className={styles.form} label="Prints" missing={missing} onEnter={add}>
        <FieldGroup>
          <TextField
            label="What was printed"
            value={draft.name}
            longest={120}
            onCommit={(name) => put({ name })}
          />
          <DateField label="On" width="narrow" value={on} issue={problem} onCommit={(day) => put({ day })} />
        </FieldGroup>
        <FieldGroup pairs>
          <NumberField
            label="Prints"
            width="narrow"
            value={prints}
            decimals={0}
            min={0}
            max={100_000}
            hint="Spoiled ones too."
            onCommit={(value) => put({ prints: value })}
          />
          <MeasureField
            label="Ink, all channels"
            kind="share"
            width="narrow"
            value={total}
            min={0}
            max={4}
            hint="100 % is one channel covering fully."
            onCommit={(value) => put({ total: value })}
          />
          <MeasureField
            label="Width"
            kind="length"
            width="narrow"
            value={widthMm}
            above={0}
            max={20_000}
            onCommit={(value) => put({ widthMm: value })}
          />
          <MeasureField
            label="Height"
            kind="length"
            width="narrow"
            value={heightMm}
            above={0}
            max={20_000}
            onCommit={(value) => put({ heightMm: value })}
          />
          <NumberField
            label="Sessions"
            width="narrow"
            value={sessions}
            decimals={0}
            min={0}
            max={1000}
            hint="0 where another entry has it."
            onCommit={(value) => put({ sessions: value })}
          />
        </FieldGroup>
        <Button type="submit" kind="strong" blockedBy={missing}>
          Note the prints
        </Button>
      </EntryForm>
    </Disclosure>
  );
}
