'use client';

import { Disclosure } from '@/app/_controls/Disclosure';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { StockList } from '@/app/_stock/StockList';
import { isNoteBegun } from '@/app/_stock/stockForms';
import { formatterFor } from '@/app/_words/formatter';
import { groupLine, groupName } from '@/app/_words/making/stockroomWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { stockKey } from '@/lib/stock/stockKey';
import type { StockGroup } from '@/lib/stock/stockroom';
import { stockWorth } from '@/lib/stock/stockWorth';
import styles from './Stockroom.module.css';
import { thingsOf } from './thingsOf';
import type { useStockroom } from './useStockroom';

type StockGroupFoldProps = Readonly<{
  group: StockGroup;
  facts: ReturnType<typeof useStockroom>;
  workspace: ReadyWorkspace;
  level: 3 | 4;
}>;

/** What stands together in the stockroom: in one line what it comes to, unfolded each thing of it. */
export function StockGroupFold({ group, facts, workspace, level }: StockGroupFoldProps) {
  const { workshop } = workspace;
  const keys = new Set(group.things.map(({ item }) => stockKey(item)));
  const worth = stockWorth(facts.values.filter(({ item }) => keys.has(stockKey(item))));
  const things = thingsOf(group, facts, workspace);
  const isShort = things.some(({ wrong = [] }) => wrong.length > 0);
  const line = groupLine(
    { kind: group.kind, isNoted: group.isNoted, worth, isShort },
    formatterFor(workshop),
    usableLocale(workshop.locale),
  );
  const id = `stock-${group.kind}-${group.id}`;
  return (
    <Disclosure
      id={id}
      level={level}
      open={things.some(({ item }) => isNoteBegun(item))}
      heading={<bdi>{groupName(group)}</bdi>}
      line={isShort || worth.shortThings > 0 ? <span className={styles.short}>{line}</span> : line}
    >
      <StockList workspace={workspace} id={id} things={things} />
    </Disclosure>
  );
}
