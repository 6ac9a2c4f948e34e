'use client';

import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { sectionWords } from '@/app/_words/workshop/stockWords';
import { strayedSizes } from '@/lib/stock/stockOf';
import type { Blank } from '@/shared/schemas/blank';
import styles from './Stock.module.css';
import { StockList } from './StockList';

type StockSectionProps = Readonly<{ workspace: ReadyWorkspace; id: string; blank: Blank }>;

/** What lies where of a blank, size by size, and what was noted last. */
export function StockSection({ workspace, id, blank }: StockSectionProps) {
  const names = blank.sizes.map(({ name }) => name);
  const strayed = strayedSizes(workspace.piles, id, names);
  const things = [...names, ...strayed].map((size) => ({
    item: { kind: 'blank', blankId: id, size, lot: null } as const,
    ...{ name: size, unit: '' },
  }));
  return (
    <div>
      <StockList workspace={workspace} id={id} things={things} />
      {strayed.length > 0 && <p className={styles.strayed}>{sectionWords.strayed(strayed)}</p>}
      <p className={styles.onward}>
        <ButtonLink href={`/making/stock#stock-blank-${id}`}>{sectionWords.toStockroom}</ButtonLink>
      </p>
    </div>
  );
}
