'use client';

import { useEffect, useId, useRef, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { PartMissing } from '@/app/_network/PartMissing';
import { numberLimits, textLimits } from '@/shared/limits';
import { type OwnRow, type OwnRowDriver, ownRowSchema } from '@/shared/schemas/ownRow';
import styles from './AddOwnRow.module.css';
import { FormulaField } from './FormulaField';
import { ownRowId } from './ownRowId';
import { driverChoices } from './ownRowWords';
import { useFormulaProblems } from './useFormulaProblems';

type AddOwnRowProps = Readonly<{
  /** Ids of own rows that exist. */
  taken: readonly string[];
  /** Own rows a formula may name; without them a formula is judged once it is added. */
  everyRow?: readonly OwnRow[] | undefined;
  placements?: number | undefined;
  /** Where there is no job to add it to, it counts in every one. */
  only?: 'workshop' | undefined;
  onAdd: (row: OwnRow, of: 'job' | 'workshop') => void;
}>;

type Way = OwnRowDriver | 'formula';

/** A short form for one more own row; nothing is in the job before “Add it”. */
export function AddOwnRow({ taken, everyRow, placements = 1, only, onAdd }: AddOwnRowProps) {
  const { currency } = useTextContext();
  const date = useToday();
  const [open, setOpen] = useState(false);
  const [label, setLabel] = useState('');
  const [way, setWay] = useState<Way>('order');
  const [amount, setAmount] = useState<number | null>(null);
  const [formula, setFormula] = useState('');
  const [of, setOf] = useState<'job' | 'workshop'>('job');
  const formulaId = useId();
  const id = ownRowId(label, taken);
  const unread: OwnRow | null =
    everyRow === undefined || way !== 'formula' || formula.trim() === ''
      ? null
      : { id, label: label.trim(), outOfPocket: true, cost: { kind: 'formula', formula } };
  const judged = useFormulaProblems(unread, everyRow ?? [], placements);
  const problems = judged.kind === 'read' ? judged.problems : [];
  const box = useRef<HTMLDivElement>(null);
  const wasOpen = useRef(open);
  useEffect(() => {
    // What was pressed is gone with the change: the focus goes to what has taken its place.
    if (wasOpen.current !== open) box.current?.querySelector<HTMLElement>('input, button')?.focus();
    wasOpen.current = open;
  }, [open]);
  if (!open)
    return (
      <div className={styles.closed} ref={box}>
        <Button onPress={() => setOpen(true)}>Add a row</Button>
      </div>
    );

  const missing =
    label.trim() === ''
      ? 'The row needs a name first.'
      : way === 'formula' && formula.trim() === ''
        ? 'The formula is still empty.'
        : problems.length > 0
          ? 'The formula cannot be read yet.'
          : waitingFor[judged.kind];
  const close = () => {
    setOpen(false);
    setLabel('');
    setAmount(null);
    setFormula('');
  };
  const add = () => {
    const cost: OwnRow['cost'] =
      way === 'formula'
        ? { kind: 'formula', formula: formula.trim() }
        : {
            kind: 'driver',
            driver: way,
            amount: amount === null ? null : { value: amount, unit: 'money', date, origin: 'yours' },
          };
    onAdd({ id, label: label.trim(), outOfPocket: true, cost }, only ?? of);
    close();
  };
  return (
    <div ref={box}>
      <EntryForm className={styles.form} label="A new row" missing={missing} onEnter={add}>
        <FieldGroup>
          <TextField
            label="Name of the row"
            value={label}
            {...textLimits(ownRowSchema, ['label'])}
            onCommit={setLabel}
          />
          <ChoiceField
            label="It costs"
            width="narrow"
            value={way}
            choices={[
              ...driverChoices.map((choice) => ({ ...choice, label: `each ${choice.label}` })),
              { value: 'formula', label: 'by a formula' },
            ]}
            onCommit={setWay}
          />
          {way !== 'formula' && (
            <NumberField
              label="Amount"
              unit={currency}
              width="narrow"
              value={amount}
              {...numberLimits(ownRowSchema, ['cost', 'amount', 'value'])}
              onCommit={setAmount}
            />
          )}
          {only === undefined && (
            <ChoiceField
              label="It counts"
              width="narrow"
              value={of}
              choices={[
                { value: 'job', label: 'in this job' },
                { value: 'workshop', label: 'in every job' },
              ]}
              onCommit={setOf}
            />
          )}
        </FieldGroup>
        {way === 'formula' && (
          <FormulaField
            id={formulaId}
            {...{ formula, problems, placements }}
            everyRow={everyRow ?? []}
            onCommit={setFormula}
          />
        )}
        {judged.kind === 'missing' && <PartMissing what="The part that reads formulas" missing={judged} />}
        <div className={styles.buttons}>
          <Button type="submit" kind="strong" blockedBy={missing}>
            Add it
          </Button>
          <Button kind="quiet" onPress={close}>
            Leave it
          </Button>
        </div>
      </EntryForm>
    </div>
  );
}

const waitingFor = {
  read: undefined,
  notRead: 'The formula is being read.',
  missing: 'The part that reads formulas could not be fetched.',
} as const;
