'use client';

import { useMemo, useState } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import {
  manyWords,
  notTakenInWords,
  notTakenWords,
  openQuoteWords,
  readWords,
  takeInWords,
  takenWords,
} from '@/app/_words/names/intakeWords';
import { compareCounts } from '@/lib/names/compareCounts';
import { type NamesTable, peopleRows } from '@/lib/names/namesTable';
import { previewNames } from '@/lib/names/previewNames';
import { takeNames } from '@/lib/names/takeNames';
import { FaultList } from './FaultList';
import { IntakeTable } from './IntakeTable';
import type { IntakeLook } from './intakeMemory';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import { type NamedLine, namesEdits } from './orderNames';

type IntakePreviewProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  named: NamedLine;
  sizes: readonly string[];
  look: IntakeLook;
  /** Of the line that says what was read. */
  id: string;
  onLook: (change: Partial<IntakeLook>) => void;
  /** Told what was taken in, and the rows that could not be. */
  onTaken: (words: string, left: NamesTable | null) => void;
  onBack: () => void;
}>;

/** What would come in: what is wrong first, then how the columns are read, then what is to be done with it. */
export function IntakePreview(props: IntakePreviewProps) {
  const { id, workspace, orderId, named, sizes, look, onLook, onTaken, onBack } = props;
  const { table, isAdded, withCounts, isPrinted } = look;
  const { line, rows } = named;
  const formatter = formatterFor(useTextContext());
  const leftOut = useMemo(() => new Set(look.leftOut), [look.leftOut]);
  const onTable = (to: NamesTable) => onLook({ table: to });
  const [isRefused, setRefused] = useState(false);
  const already = isAdded ? rows : none;
  const preview = useMemo(() => previewNames(table, sizes, already), [table, sizes, already]);
  const wanted = preview.rows.filter((row) => !leftOut.has(row.line));
  const faulty = wanted.filter(({ faults }) => faults.length > 0);
  const comes = takeNames({ rows: wanted }, () => '');
  const { key, after } = readWords(preview, faulty.length, formatter);
  const takeIn = () => {
    const { rows: coming, left } = takeNames(preview, newId, leftOut);
    const to = (now: typeof rows) => (isAdded ? [...now, ...coming] : coming);
    const quantities = withCounts ? compareCounts(to(rows), line.quantities, sizes).byNames : undefined;
    const { state } = workspace.edit(
      `${takeInWords(coming.length, formatter)}, ${line.name}`,
      namesEdits(orderId, named, to, { quantities, isPrinted }),
    );
    setRefused(state === 'refused' || state === 'notOpen');
    if (state !== 'shown') return;
    onTaken(
      takenWords(coming.length, left.length, formatter),
      left.length === 0 ? null : onlyLines(table, left),
    );
  };
  return (
    <div className={styles.preview}>
      <p className={styles.read} id={id} tabIndex={-1}>
        <strong>{key}</strong>
        {after}
      </p>
      {preview.isMany && <Advice severity="note">{manyWords(preview.pieces, formatter)}</Advice>}
      {table.openQuotes.length > 0 && <Advice severity="caution">{openQuoteWords(table.openQuotes)}</Advice>}
      <FaultList
        {...{ table, preview, sizes, leftOut, onTable }}
        onLeftOut={(lines) => onLook({ leftOut: [...lines] })}
      />
      <IntakeTable {...{ table, preview, leftOut, onTable }} />
      {preview.notTaken.length > 0 && (
        <p className={styles.more}>{notTakenWords(preview.notTaken.map(({ shows }) => shows))}</p>
      )}
      {rows.length > 0 && (
        <ChoiceField<'add' | 'replace'>
          label="With the names here"
          value={isAdded ? 'add' : 'replace'}
          choices={[
            { value: 'add', label: `Add to the ${formatter.number(rows.length, 0)} here` },
            { value: 'replace', label: `In place of the ${formatter.number(rows.length, 0)} here` },
          ]}
          onCommit={(value) => onLook({ isAdded: value === 'add' })}
        />
      )}
      <CheckField
        label="Order as many of each size as the names say"
        checked={withCounts}
        onCommit={(checked) => onLook({ withCounts: checked })}
      />
      <CheckField
        label="Print the names and numbers on the pieces"
        checked={isPrinted}
        onCommit={(checked) => onLook({ isPrinted: checked })}
      />
      <div className={styles.ways}>
        <Button
          kind="strong"
          blockedBy={comes.rows.length === 0 ? 'No row can be taken in yet.' : undefined}
          onPress={takeIn}
        >
          {takeInWords(comes.rows.length, formatter)}
        </Button>
        <Button kind="quiet" onPress={onBack}>
          Back to the text
        </Button>
      </div>
      <p role="alert" className={styles.wrong}>
        {isRefused && `${notTakenInWords.sentence} ${notTakenInWords.detail}`}
      </p>
    </div>
  );
}

// Helpers

const none: readonly never[] = [];

/** The table with its head and those rows alone. */
function onlyLines(table: NamesTable, rows: readonly { readonly line: number }[]): NamesTable {
  const lines = new Set(rows.map(({ line }) => line));
  const people = new Set(peopleRows(table));
  return { ...table, rows: table.rows.filter((row) => !people.has(row) || lines.has(row.line)) };
}
