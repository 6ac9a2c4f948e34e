'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { columnWords, moreRowsWords, rowWords } from '@/app/_words/names/intakeWords';
import type { NamesPreview } from '@/lib/names/namePreview';
import { type ColumnPart, type NamesTable, withColumn } from '@/lib/names/namesTable';
import styles from './Names.module.css';

type IntakeTableProps = Readonly<{
  table: NamesTable;
  preview: NamesPreview;
  leftOut: ReadonlySet<number>;
  onTable: (table: NamesTable) => void;
}>;

/** Enough to see what the columns hold. */
const FIRST = 5;
const STEP = 100;

/** All rows as they were read, under what is taken from each column, which can be changed. */
export function IntakeTable({ table, preview, leftOut, onTable }: IntakeTableProps) {
  const formatter = formatterFor(useTextContext());
  const [drawn, setDrawn] = useState(FIRST);
  const { columns, hasHead, rows } = table;
  const more = preview.rows.length - drawn;
  return (
    <div>
      {!table.isMessage && (
        <CheckField
          label="The first row names the columns"
          checked={hasHead}
          onCommit={(checked) => onTable({ ...table, hasHead: checked })}
        />
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard */}
      <section className={styles.scroll} aria-label="Rows that were read" tabIndex={0}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">line</th>
              {columns.map((part, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                <th key={at} scope="col">
                  <ChoiceField<ColumnPart>
                    label={columnWords(at, hasHead ? (rows[0]?.cells[at] ?? '') : '')}
                    width="full"
                    value={part}
                    choices={parts}
                    onCommit={(value) => onTable(withColumn(table, at, value))}
                  />
                </th>
              ))}
              <th scope="col">read as</th>
            </tr>
          </thead>
          <tbody>
            {preview.rows.slice(0, drawn).map((row) => (
              <tr key={row.line} className={classes(leftOut.has(row.line) && styles.leftOut)}>
                <td>{formatter.number(row.line, 0)}</td>
                {columns.map((part, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  <td key={at} className={classes(part === 'nothing' && styles.notRead)} dir="auto">
                    {row.cells[at] ?? ''}
                  </td>
                ))}
                <td className={styles.readAs}>
                  {leftOut.has(row.line) ? 'left out' : rowWords(row, formatter)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {more > 0 && (
        <Button kind="quiet" onPress={() => setDrawn((now) => now + STEP)}>
          {moreRowsWords(more, STEP, formatter)}
        </Button>
      )}
    </div>
  );
}

// Helpers

const parts: readonly { readonly value: ColumnPart; readonly label: string }[] = [
  { value: 'name', label: 'Name' },
  { value: 'size', label: 'Size' },
  { value: 'number', label: 'Number' },
  { value: 'pieces', label: 'How many' },
  { value: 'nothing', label: 'not taken' },
];
