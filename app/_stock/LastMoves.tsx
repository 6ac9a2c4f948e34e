'use client';

import { useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { entryWords } from '@/app/_words/workshop/stockWords';
import { lastMoves } from '@/lib/stock/lastMoves';
import { isRenaming } from '@/lib/stock/renamedStock';
import { postingsOf, type StockEntry } from '@/lib/stock/stockEntry';
import { stockKey } from '@/lib/stock/stockKey';
import styles from './Stock.module.css';
import type { StockThing } from './StockRow';

/** Moves shown before the older ones are folded away. */
const NEWEST = 5;

type LastMovesProps = Readonly<{
  workspace: ReadyWorkspace;
  /** Of the list, for the fold of its older notes. */
  id: string;
  things: readonly Pick<StockThing, 'item' | 'name' | 'unit'>[];
}>;

/** What was noted of some things, newest first. An entry never changes: it can be taken back, and counted again by undo. */
export function LastMoves({ workspace, id, things }: LastMovesProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const { stockMove, stockTransfer, stockCount } = workspace.entries;
  const byKey = new Map(things.map((thing) => [stockKey(thing.item), thing]));
  const moves = lastMoves([...stockMove, ...stockTransfer, ...stockCount], (item) =>
    byKey.has(stockKey(item)),
  );
  const formatter = formatterFor(workspace.workshop);
  const list = (some: readonly StockEntry[]) => (
    <ul className={styles.moves}>
      {some.map((entry) => {
        const thing = postingsOf(entry)
          .map(({ item }) => byKey.get(stockKey(item)))
          .findLast((one) => one !== undefined);
        const name = thing?.name ?? '';
        const { words } = entryWords(entry, formatter, workspace.workshop.locale, thing?.unit);
        const day = formatter.day(dayOf(new Date(entry.at)));
        return (
          <li key={workspace.firstId(entry.id)} className={styles.move}>
            <span className={styles.day}>{day}</span>
            <span className={styles.what}>
              <strong>{name}</strong> {words}
            </span>
            {!isRenaming(entry) && (
              <Button
                kind="quiet"
                spoken={`Take back ${name}: ${words}`}
                onPress={() => {
                  const label = `Take back ${name}: ${words}`;
                  const entries = [{ kind: 'takeBack' as const, body: { entryId: entry.id } }];
                  const { state } = workspace.note(label, entries);
                  setProblem(state === 'shown' ? null : notNotedWords(state));
                  if (state === 'shown') setRemoved(label);
                }}
              >
                Take back
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
  return (
    <div>
      {list(moves.slice(0, NEWEST))}
      {problem !== null && (
        <p role="alert" className={styles.wrong}>
          {problem}
        </p>
      )}
      {moves.length > NEWEST && (
        <Disclosure
          id={`stock-older-${id}`}
          level={4}
          heading="Older notes"
          line={formatter.count(moves.length - NEWEST, 'note')}
        >
          {list(moves.slice(NEWEST))}
        </Disclosure>
      )}
      <RemovedNote
        how="taken back"
        what={removed !== null && workspace.undoLabel === removed ? removed.replace(/^Take back /, '') : null}
        onUndo={() => void workspace.undo()}
      />
    </div>
  );
}
