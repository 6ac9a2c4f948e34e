'use client';

import { useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { TextField } from '@/app/_fields/TextField';
import type { Formatter } from '@/app/_words/formatter';
import { cellLabelWords, meantWords } from '@/app/_words/names/intakeWords';
import { nameFaultWords } from '@/app/_words/names/nameFaultWords';
import type { PreviewRow } from '@/lib/names/namePreview';
import type { NamesTable } from '@/lib/names/namesTable';
import type { SizeCount } from '@/lib/names/readSize';
import styles from './Names.module.css';
import { sizeFaultOf } from './sizeFault';

type FaultRowProps = Readonly<{
  row: PreviewRow;
  table: NamesTable;
  formatter: Formatter;
  isLeftOut: boolean;
  /** Lines whose size is written the same and as unclear. */
  linesWritten: (asWritten: string) => readonly number[];
  onSize: (lines: readonly number[], text: string) => void;
  onCell: (column: number, text: string) => void;
  onLeaveOut: (isOut: boolean) => void;
}>;

/** One row with what is wrong with it, its cells to be typed over, and what may have been meant. */
export function FaultRow(props: FaultRowProps) {
  const { row, table, formatter, isLeftOut, linesWritten, onSize, onCell, onLeaveOut } = props;
  const item = useRef<HTMLLIElement>(null);
  const sizeFault = table.columns.includes('size') ? sizeFaultOf(row.faults) : null;
  const alike = sizeFault === null ? [] : linesWritten(sizeFault.asWritten);
  return (
    <li ref={item} className={styles.fault} tabIndex={-1} aria-label={`Line ${row.line}`}>
      <p className={styles.lineNumber}>line {formatter.number(row.line, 0)}</p>
      {isLeftOut ? (
        <p className={styles.faultWords}>Left out. Nothing of it comes into the order.</p>
      ) : (
        <>
          <div className={styles.cells}>
            {table.columns.map((part, at) =>
              part === 'nothing' ? null : (
                <TextField
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  key={at}
                  label={cellLabelWords(part, table.hasHead ? (table.rows[0]?.cells[at] ?? '') : '')}
                  width="full"
                  isTrimmed={false}
                  value={row.cells[at] ?? ''}
                  onCommit={(text) => onCell(at, text)}
                />
              ),
            )}
          </div>
          <ul className={styles.faultWords}>
            {row.faults.length === 0 && <li>Nothing wrong any more.</li>}
            {row.faults.map((fault) => {
              const { sentence, detail } = nameFaultWords(fault, formatter);
              return (
                <li key={fault.code}>
                  <strong>{sentence}</strong> {detail}
                </li>
              );
            })}
          </ul>
        </>
      )}
      <div className={styles.ways}>
        {!isLeftOut &&
          sizeFault !== null &&
          meanings(sizeFault).map((meant) => (
            <Button
              key={`${meant.size} ${meant.pieces}`}
              onPress={() => {
                // The button goes with the fault it mends.
                item.current?.focus();
                onSize(alike, meant.pieces === 1 ? meant.size : `${meant.size} (${meant.pieces})`);
              }}
            >
              {meantWords(meant, alike.length, formatter)}
            </Button>
          ))}
        <Button
          kind="quiet"
          spoken={`${isLeftOut ? BACK_IN : OUT}, line ${row.line}`}
          onPress={() => onLeaveOut(!isLeftOut)}
        >
          {isLeftOut ? BACK_IN : OUT}
        </Button>
      </div>
    </li>
  );
}

// Helpers

const OUT = 'Leave it out';
const BACK_IN = 'Take it after all';

/** What may have been meant, each a button. */
function meanings(fault: NonNullable<ReturnType<typeof sizeFaultOf>>): readonly SizeCount[] {
  switch (fault.code) {
    case 'unknownSize':
      return fault.nearest === null ? [] : [{ size: fault.nearest, pieces: 1 }];
    case 'severalSizes':
      return fault.sizes;
    case 'twoMeanings':
      return fault.offers;
    default:
      return fault satisfies never;
  }
}
