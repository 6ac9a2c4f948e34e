'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { stockKey } from '@/lib/stock/stockKey';
import { LastMoves } from './LastMoves';
import styles from './Stock.module.css';
import { StockRow, type StockThing } from './StockRow';

type StockListProps = Readonly<{
  workspace: ReadyWorkspace;
  /** Of the list, for the fold of its older notes. */
  id: string;
  things: readonly StockThing[];
}>;

/** What lies where of some things, one by one, and what was noted of them last. */
export function StockList({ workspace, id, things }: StockListProps) {
  return (
    <>
      <ul className={styles.sizes}>
        {things.map((thing) => (
          <StockRow key={stockKey(thing.item)} workspace={workspace} thing={thing} />
        ))}
      </ul>
      <LastMoves workspace={workspace} id={id} things={things} />
    </>
  );
}
