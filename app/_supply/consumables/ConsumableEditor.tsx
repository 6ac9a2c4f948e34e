'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import styles from '@/app/_supply/Supply.module.css';
import { unitOf } from '@/app/_words/supply/itemWords';
import { driverWords, unitChoiceWords } from '@/app/_words/supply/supplierWords';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import {
  type Consumable,
  consumableDrivers,
  consumableSchema,
  consumableUnits,
} from '@/shared/schemas/making/supply';
import type { FieldPath } from '@/shared/setIn';

type ConsumableEditorProps = Readonly<{ workspace: ReadyWorkspace; id: string; consumable: Consumable }>;
type Use = Consumable['uses'][number];

/** What is used up: what it is counted in, what uses it, when it is bought again. */
export function ConsumableEditor({ workspace, id, consumable }: ConsumableEditorProps) {
  const set = (label: string, path: FieldPath, value: unknown) =>
    void workspace.setField({ kind: 'consumable', id }, `${label} of ${consumable.name}`, path, value);
  return (
    <div className={styles.editor}>
      <FieldGroup>
        <TextField
          label="Name"
          needed
          value={consumable.name}
          {...textLimits(consumableSchema, ['name'])}
          onCommit={(name) => set('Name', ['name'], name)}
        />
        <ChoiceField
          label="Counted in"
          value={consumable.unit}
          choices={consumableUnits.map((value) => ({ value, label: unitChoiceWords[value] }))}
          onCommit={(unit) => set('Unit', ['unit'], unit)}
        />
        <NumberField
          label="Buy again at"
          unit={unitOf(consumable.unit, 2)}
          value={consumable.reorderAt}
          {...numberLimits(consumableSchema, ['reorderAt'])}
          hint="Empty where only jobs decide."
          onCommit={(level) => set('Reorder level', ['reorderAt'], level)}
        />
      </FieldGroup>
      <UseFields {...{ workspace, id, consumable }} />
      <TextField
        label="Note"
        rows={2}
        value={consumable.note}
        {...textLimits(consumableSchema, ['note'])}
        onCommit={(note) => set('Note', ['note'], note)}
      />
    </div>
  );
}

// Helpers

function UseFields({ workspace, id, consumable }: ConsumableEditorProps) {
  const change = (label: string, to: (uses: Consumable['uses']) => Consumable['uses'], key?: string) =>
    void workspace.edit(
      `${label} of ${consumable.name}`,
      [{ do: 'change', kind: 'consumable', id, to: (now: Consumable) => ({ ...now, uses: to(now.uses) }) }],
      key === undefined ? undefined : `${id} ${key} ${typing.act()}`,
    );
  const setUse = (useId: string, part: Partial<Use>) =>
    change(
      'Use',
      (uses) => uses.map((use) => (use.id === useId ? { ...use, ...part } : use)),
      `${useId} ${Object.keys(part).join()}`,
    );
  const most = mostEntries(consumableSchema, ['uses']);
  return (
    <div className={styles.rows}>
      {consumable.uses.map((use, place) => (
        <fieldset className={styles.set} key={use.id}>
          <legend className={styles.quiet}>
            {consumable.uses.length === 1 ? 'What uses it' : `What uses it, ${place + 1}`}
          </legend>
          <FieldGroup pairs>
            <NumberField
              label="Takes"
              width="narrow"
              unit={unitOf(consumable.unit, 2)}
              needed
              value={use.amount}
              {...numberLimits(consumableSchema, ['uses', 0, 'amount'])}
              onCommit={(amount) => amount !== null && setUse(use.id, { amount })}
            />
            <ChoiceField
              label="For"
              value={use.per}
              choices={consumableDrivers.map((value) => ({ value, label: driverWords[value] }))}
              onCommit={(per) => setUse(use.id, { per, pressIds: null, packagingIds: null })}
            />
            <Button
              kind="quiet"
              spoken={`Remove use ${place + 1} of ${consumable.name}`}
              onPress={() => change('Remove a use', (uses) => uses.filter((one) => one.id !== use.id))}
            >
              Remove
            </Button>
          </FieldGroup>
          {(use.per === 'press' || use.per === 'session') && (
            <OfSome
              things={workspace.workshop.presses}
              ids={use.pressIds}
              onCommit={(pressIds) => setUse(use.id, { pressIds })}
            />
          )}
          {(use.per === 'piece' || use.per === 'order') && (
            <OfSome
              things={workspace.workshop.packagings}
              ids={use.packagingIds}
              onCommit={(packagingIds) => setUse(use.id, { packagingIds })}
            />
          )}
        </fieldset>
      ))}
      <div className={styles.acts}>
        <Button
          blockedBy={consumable.uses.length >= most ? `It keeps ${most} uses at most.` : undefined}
          onPress={() =>
            change('A further use', (uses) => [
              ...uses,
              { id: newId(), per: 'press', amount: 1, pressIds: null, packagingIds: null },
            ])
          }
        >
          Say what uses it
        </Button>
      </div>
    </div>
  );
}

type OfSomeProps = Readonly<{
  things: readonly { readonly id: string; readonly name: string }[];
  /** Null where all do. */
  ids: readonly string[] | null;
  onCommit: (ids: string[] | null) => void;
}>;

/** Which of several presses or packagings use it; all of them unless some are left out. */
function OfSome({ things, ids, onCommit }: OfSomeProps) {
  if (things.length < 2) return null;
  const toggle = (id: string, isOn: boolean) => {
    const next = things.flatMap((thing) =>
      (thing.id === id ? isOn : ids === null || ids.includes(thing.id)) ? [thing.id] : [],
    );
    onCommit(next.length === things.length ? null : next);
  };
  return (
    <div className={styles.acts}>
      {things.map(({ id, name }) => (
        <CheckField
          key={id}
          label={name}
          checked={ids === null || ids.includes(id)}
          onCommit={(isOn) => toggle(id, isOn)}
        />
      ))}
    </div>
  );
}
