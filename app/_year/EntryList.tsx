'use client';

import { useDeferredValue, useId, useState } from 'react';
import { KeptFileButton } from '@/app/_attachments/KeptFileButton';
import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { Finder } from '@/app/_fields/Finder';
import { useNoting } from '@/app/_order/notes/useNoting';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { entryFigure, entryName, foundWords, moreEntriesWords } from '@/app/_words/year/listWords';
import { leftOutWords, rowKindWords } from '@/app/_words/year/yearNames';
import { aboutName } from './aboutName';
import { type ListedEntry, listedEntries } from './listedEntries';
import styles from './Year.module.css';
import type { YearSection, YearSectionProps } from './yearSection';

/** As many rows are seen at first, and so many more each time they are asked for. */
const [NEWEST, MORE] = [5, 100];

/** Every expense and every hour that was noted for the year, the last day first. */
export function EntryList({ on }: YearSectionProps) {
  const { standing, formatter } = on;
  const findId = useId();
  const [text, setText] = useState('');
  const [rows, setRows] = useState(NEWEST);
  const looked = useDeferredValue(text);
  const all = listedEntries(standing);
  const found = all.filter((one) => isFound(one, looked, on));
  if (all.length === 0) return null;
  return (
    <div className={styles.list}>
      {all.length > NEWEST && (
        <Finder
          id={findId}
          label="Find an expense or hours"
          text={text}
          onText={(to) => {
            setText(to);
            setRows(NEWEST);
          }}
          result={text.trim() === '' ? '' : foundWords(found.length, formatter)}
        />
      )}
      <RowList label="Expenses and hours">
        {found.slice(0, rows).map((one) => (
          <EntryRow key={on.workspace.firstId(one.row.id)} one={one} on={on} />
        ))}
      </RowList>
      {found.length > rows && (
        <Button onPress={() => setRows(rows + MORE)}>{moreEntriesWords(rows + MORE, found.length)}</Button>
      )}
    </div>
  );
}

// Helpers

/** Every word that is typed stands somewhere in the row. */
function isFound({ row, what }: ListedEntry, text: string, on: YearSection): boolean {
  const said = [what, rowKindWords(row), aboutName(row.about, on), row.day].join(' ').toLowerCase();
  return text
    .toLowerCase()
    .split(/\s+/)
    .every((word) => said.includes(word));
}

function EntryRow({ one: { row, what }, on }: Readonly<{ one: ListedEntry; on: YearSection }>) {
  const { workspace, today, locale } = on;
  const { problem, note } = useNoting({ workspace });
  const figure = entryFigure(row, locale);
  const named = what === '' ? entryName(row) : what;
  const about = aboutName(row.about, on);
  const left = leftOutWords(row);
  const receipt = workspace.entries.expense.find(({ id }) => id === row.id)?.body.receipt ?? null;
  return (
    <ListRow
      acts={
        <>
          {receipt !== null && <KeptFileButton attachment={receipt} readFile={workspace.readFile} />}
          <Button
            kind="quiet"
            spoken={`Take back ${named}, ${figure}`}
            onPress={() => note(`Take back ${named}`, [{ kind: 'takeBack', body: { entryId: row.id } }])}
          >
            Take back
          </Button>
        </>
      }
    >
      <strong>{figure}</strong> <bdi>{named}</bdi>
      <p className={styles.quiet}>
        {shortDay(row.day, today, locale)}
        {named !== entryName(row) && `, ${entryName(row).toLowerCase()}`}
        {about !== '' && (
          <>
            , <bdi>{about}</bdi>
          </>
        )}
        {left !== '' && `; in no sum: ${left}`}
      </p>
      {problem !== null && <p role="alert">{problem}</p>}
    </ListRow>
  );
}
