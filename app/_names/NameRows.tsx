'use client';

import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
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
import type { NamedLine } from './orderNames';
import { useRowChanges } from './useRowChanges';

type NameRowsProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  named: NamedLine;
  sizes: readonly string[];
}>;

/** So many rows of fields are drawn before the rest is asked for, the first few at once and the others as there is time. */
const DRAWN = 50;
const AT_ONCE = 8;

/** The names one by one, to be mended, sorted for packing, added and removed. */
export function NameRows({ workspace, orderId, named, sizes }: NameRowsProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { line, rows } = named;
  const [drawn, setDrawn] = useState(DRAWN);
  const [sort, setSort] = useState<Sort>('came');
  /** Ids as they were sorted: a row stays where it is while its name is typed. */
  const [sorted, setSorted] = useState<ReadonlyMap<string, number>>(new Map());
  /** Ids of rows that were added here, the last first. */
  const [added, setAdded] = useState<readonly string[]>([]);
  const toFocus = useRef<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row is there once the rows are others
  useEffect(() => {
    if (toFocus.current !== null) focusById(`name-${toFocus.current}`);
    toFocus.current = null;
  }, [rows]);
  const [removed, setRemoved] = useState<string | null>(null);
  const drawnNow = useDeferredValue(drawn, AT_ONCE);
  const shown = useMemo(() => inOrder(rows, sorted, added), [rows, sorted, added]);
  const twice = useMemo(() => namesTwice(rows), [rows]);
  const changes = useRowChanges(workspace, orderId, named);
  const { remove: removeRow } = changes;
  const remove = useCallback(
    ({ id, name }: NameRow) => {
      removeRow(id, name || 'a row');
      setRemoved(name || 'a row');
    },
    [removeRow],
  );
  const sortBy = (by: Sort) => {
    setSort(by);
    setAdded([]);
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
    changes.add(row);
    setAdded((now) => [row.id, ...now]);
    toFocus.current = row.id;
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
        what={workspace.undoLabel === `Remove ${removed} from ${line.name}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <div className={classes(styles.row, styles.heads)} aria-hidden="true">
        <span>Name</span>
        <span>Size</span>
        <span>Number</span>
      </div>
      <ul className={styles.plainList}>
        {shown.slice(0, drawnNow).map((row, at) => (
          <NameRowFields
            key={row.id}
            {...{ row, sizes }}
            at={at + 1}
            isTwice={twice.has(personKey(row.name))}
            onChange={changes.changePart}
            onRemove={remove}
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

/** What was added stands where it was added, above; what came otherwise after the sorting, at the end. */
function inOrder(
  rows: readonly NameRow[],
  sorted: ReadonlyMap<string, number>,
  added: readonly string[],
): readonly NameRow[] {
  const above = new Map(added.map((id, at) => [id, at - added.length]));
  const placeOf = ({ id }: NameRow) => above.get(id) ?? sorted.get(id) ?? sorted.size;
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
