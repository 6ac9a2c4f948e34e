'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { moreRowsWords } from '@/app/_words/names/intakeWords';
import { packingOrder } from '@/lib/names/packingOrder';
import { personKey } from '@/lib/names/personKey';
import type { NameRow } from '@/shared/schemas/order';
import { NameRowFields } from './NameRowFields';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import { type ChangeOfNames, type NamedLine, namesEdits } from './orderNames';

type NameRowsProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  named: NamedLine;
  sizes: readonly string[];
}>;

/** So many rows of fields are drawn before the rest is asked for. */
const DRAWN = 50;

/** The names one by one, to be mended, sorted for packing, added and removed. */
export function NameRows({ workspace, orderId, named, sizes }: NameRowsProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { line, rows } = named;
  const [drawn, setDrawn] = useState(DRAWN);
  const [sort, setSort] = useState<Sort>('came');
  /** Ids as they were sorted: a row stays where it is while its name is typed. */
  const [sorted, setSorted] = useState<ReadonlyMap<string, number>>(new Map());
  const [removed, setRemoved] = useState<string | null>(null);
  const shown = inOrder(rows, sorted);
  const twice = namesTwice(rows);
  const change = (label: string, to: ChangeOfNames, key?: string) =>
    workspace.edit(label, namesEdits(orderId, named, to), key);
  const sortBy = (by: Sort) => {
    setSort(by);
    const ids = by === 'came' ? [] : packingOrder(rows, { by, sizes, locale: context.locale });
    setSorted(new Map(ids.map(({ id }, at) => [id, at])));
  };
  const add = () => {
    const row: NameRow = {
      id: newId(),
      name: '',
      size: sizes.length === 1 ? (sizes[0] ?? '') : '',
      number: '',
    };
    change(`A name for ${line.name}`, (now) => [...now, row]);
    setDrawn((now) => Math.max(now, rows.length + 1));
    setTimeout(() => focusById(`name-${row.id}`));
  };
  const remove = (row: NameRow) => {
    const label = `Remove ${row.name || 'a row'} from ${line.name}`;
    change(label, (now) => now.filter(({ id }) => id !== row.id));
    setRemoved(label);
  };
  return (
    <div className={styles.rows}>
      <div className={styles.tools}>
        <ChoiceField<Sort>
          label="Sorted"
          width="narrow"
          value={sort}
          choices={[
            { value: 'came', label: 'as they came' },
            { value: 'size', label: 'by size' },
            { value: 'name', label: 'by person' },
          ]}
          onCommit={sortBy}
        />
        <Button onPress={add}>Add a name</Button>
      </div>
      <RemovedNote
        what={
          removed !== null && workspace.undoLabel === removed
            ? removed.slice('Remove '.length, -` from ${line.name}`.length)
            : null
        }
        onUndo={() => void workspace.undo()}
      />
      <ul className={styles.plainList}>
        {shown.slice(0, drawn).map((row, at) => (
          <NameRowFields
            key={row.id}
            {...{ row, sizes }}
            at={at + 1}
            isTwice={twice.has(personKey(row.name))}
            onChange={(part, text, act) =>
              change(
                `${partNames[part]} for ${line.name}`,
                (now) => now.map((one) => (one.id === row.id ? { ...one, [part]: text } : one)),
                `${orderId} ${row.id} ${part} ${act}`,
              )
            }
            onRemove={() => remove(row)}
          />
        ))}
      </ul>
      {shown.length > drawn && (
        <Button kind="quiet" onPress={() => setDrawn((now) => now + DRAWN)}>
          {moreRowsWords(shown.length - drawn, DRAWN, formatter)}
        </Button>
      )}
    </div>
  );
}

// Helpers

type Sort = 'came' | 'size' | 'name';

const partNames = { name: 'Name', size: 'Size', number: 'Number' } as const;

/** What came after the sorting stands at the end. */
function inOrder(rows: readonly NameRow[], sorted: ReadonlyMap<string, number>): readonly NameRow[] {
  const placeOf = ({ id }: NameRow) => sorted.get(id) ?? sorted.size;
  return rows.toSorted((one, other) => placeOf(one) - placeOf(other));
}

function namesTwice(rows: readonly NameRow[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { name } of rows) {
    const key = personKey(name);
    if (key === '') continue;
    if (seen.has(key)) twice.add(key);
    seen.add(key);
  }
  return twice;
}
