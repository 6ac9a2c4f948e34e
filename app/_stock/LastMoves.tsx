'use client';

import { useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { entryWords } from '@/app/_words/workshop/stockWords';
import { lastMoves } from '@/lib/stock/lastMoves';
import { isRenaming } from '@/lib/stock/renamedStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import styles from './Stock.module.css';

/** Moves shown before the older ones are folded away. */
const NEWEST = 5;

type LastMovesProps = Readonly<{ workspace: ReadyWorkspace; blankId: string }>;

/** What was noted of a blank, newest first. An entry never changes: it can be taken back, and counted again by undo. */
export function LastMoves({ workspace, blankId }: LastMovesProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const { stockMove, stockTransfer, stockCount } = workspace.entries;
  const moves = lastMoves([...stockMove, ...stockTransfer, ...stockCount], blankId);
  const formatter = formatterFor(workspace.workshop);
  const list = (some: readonly StockEntry[]) => (
    <ul className={styles.moves}>
      {some.map((entry) => {
        const { size, words } = entryWords(entry, formatter, workspace.workshop.locale);
        const day = formatter.day(dayOf(new Date(entry.at)));
        return (
          <li key={workspace.firstId(entry.id)} className={styles.move}>
            <span className={styles.day}>{day}</span>
            <span className={styles.what}>
              <strong>{size}</strong> {words}
            </span>
            {!isRenaming(entry) && (
              <Button
                kind="quiet"
                spoken={`Take back ${size}: ${words}`}
                onPress={() => {
                  const label = `Take back ${size}: ${words}`;
                  workspace.note(label, [{ kind: 'takeBack', body: { entryId: entry.id } }]);
                  setRemoved(label);
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
      {moves.length > NEWEST && (
        <Disclosure
          id={`stock-older-${blankId}`}
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
