'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { moreRowsWords } from '@/app/_words/names/intakeWords';
import type { NamesPreview } from '@/lib/names/namePreview';
import { type NamesTable, withCell } from '@/lib/names/namesTable';
import { FaultRow } from './FaultRow';
import styles from './Names.module.css';
import { sizeFaultOf } from './sizeFault';

type FaultListProps = Readonly<{
  table: NamesTable;
  preview: NamesPreview;
  leftOut: ReadonlySet<number>;
  onTable: (table: NamesTable) => void;
  onLeftOut: (leftOut: ReadonlySet<number>) => void;
}>;

const STEP = 10;

/** Rows with something wrong, each with the ways to mend it. One that is mended stays in sight. */
export function FaultList({ table, preview, leftOut, onTable, onLeftOut }: FaultListProps) {
  const formatter = formatterFor(useTextContext());
  const [drawn, setDrawn] = useState(STEP);
  const [touched, setTouched] = useState<ReadonlySet<number>>(new Set());
  const rows = preview.rows.filter(({ line, faults }) => faults.length > 0 || touched.has(line));
  const more = rows.length - drawn;
  const touch = (lines: readonly number[]) => setTouched((now) => new Set([...now, ...lines]));
  const linesWritten = (asWritten: string) =>
    preview.rows.filter(({ faults }) => sizeFaultOf(faults)?.asWritten === asWritten).map(({ line }) => line);
  /** The first column of sizes gets the answer; what further ones hold has been read into it. */
  const setSize = (lines: readonly number[], text: string) => {
    touch(lines);
    const columns = table.columns.flatMap((part, at) => (part === 'size' ? [at] : []));
    onTable(
      lines.reduce(
        (now, line) =>
          columns.reduce((all, at, place) => withCell(all, line, at, place === 0 ? text : ''), now),
        table,
      ),
    );
  };
  if (rows.length === 0) return null;
  return (
    <>
      <ol className={styles.faults} aria-label="Rows to look at">
        {rows.slice(0, drawn).map((row) => (
          <FaultRow
            key={row.line}
            {...{ row, table, formatter }}
            isLeftOut={leftOut.has(row.line)}
            linesWritten={linesWritten}
            onSize={setSize}
            onCell={(column, text) => {
              touch([row.line]);
              onTable(withCell(table, row.line, column, text));
            }}
            onLeaveOut={(isOut) => {
              touch([row.line]);
              const others = [...leftOut].filter((line) => line !== row.line);
              onLeftOut(new Set(isOut ? [...others, row.line] : others));
            }}
          />
        ))}
      </ol>
      {more > 0 && (
        <Button kind="quiet" onPress={() => setDrawn((now) => now + STEP)}>
          {moreRowsWords(more, STEP, formatter)}
        </Button>
      )}
    </>
  );
}
