'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { strayedSizes } from '@/lib/stock/stockOf';
import type { Blank } from '@/shared/schemas/blank';
import { LastMoves } from './LastMoves';
import { SizeStockRow } from './SizeStockRow';
import styles from './Stock.module.css';

type StockSectionProps = Readonly<{ workspace: ReadyWorkspace; id: string; blank: Blank }>;

/** What lies where of a blank, size by size, and what was noted last. */
export function StockSection({ workspace, id, blank }: StockSectionProps) {
  const names = blank.sizes.map(({ name }) => name);
  const strayed = strayedSizes(workspace.piles, id, names);
  return (
    <div>
      <ul className={styles.sizes}>
        {[...names, ...strayed].map((size) => (
          <SizeStockRow key={size} workspace={workspace} blankId={id} size={size} />
        ))}
      </ul>
      {strayed.length > 0 && (
        <p className={styles.strayed}>
          {strayed.join(', ')}: noted, but no size of this blank any more. Note there what became of them.
        </p>
      )}
      <LastMoves workspace={workspace} blankId={id} />
    </div>
  );
}
