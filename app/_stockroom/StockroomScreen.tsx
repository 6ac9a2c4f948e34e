'use client';

import { useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { PageHead } from '@/app/_controls/PageHead';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { LaterPart } from '@/app/_network/LaterPart';
import { StockList } from '@/app/_stock/StockList';
import { isNoteBegun } from '@/app/_stock/stockForms';
import { formatterFor } from '@/app/_words/formatter';
import { kindWords, stockroomWords, worthLine } from '@/app/_words/making/stockroomWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { StockNeed } from '@/lib/stock/reserved';
import type { StockGroup } from '@/lib/stock/stockroom';
import { stockWorth } from '@/lib/stock/stockWorth';
import { laterParts } from './laterParts';
import { StockGroupFold } from './StockGroupFold';
import styles from './Stockroom.module.css';
import { thingsOf } from './thingsOf';
import { useStockroom } from './useStockroom';

/** Everything that lies in stock: what of it where, what it cost, what is kept for work, and what became of it. */
export function StockroomScreen() {
  return <WithWorkspace>{(workspace) => <Stockroom workspace={workspace} />}</WithWorkspace>;
}

// Helpers

/** Whatever tells what lies here, what it cost and what is kept of it. */
const STOCK_KINDS: ReadonlySet<string> = new Set([
  ...['stockMove', 'stockTransfer', 'stockCount', 'takeBack', 'pressing', 'runStep', 'runStandard'],
  ...['blank', 'consumable', 'supplier', 'job', 'order', 'run'],
]);

const NO_NEEDS: readonly StockNeed[] = [];

const kinds = ['blank', 'paper', 'ink', 'consumable', 'finished'] as const;

function Stockroom({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  useGoToHash();
  const [needs, setNeeds] = useState<readonly StockNeed[]>(NO_NEEDS);
  const facts = useStockroom(workspace, needs);
  const { workshop } = workspace;
  const formatter = formatterFor(workshop);
  const line = worthLine(stockWorth(facts.values), formatter, usableLocale(workshop.locale));
  const folds = (groups: readonly StockGroup[], level: 3 | 4) =>
    groups.map((group) => (
      <StockGroupFold key={`${group.kind} ${group.id}`} {...{ group, facts, workspace, level }} />
    ));
  return (
    <>
      <MakingLinks here="/making/stock" />
      <LaterPart part={laterParts.needs} what="What is reserved" props={{ workspace, onNeeds: setNeeds }} />
      <PageHead title={stockroomWords.title} line={line === '' ? stockroomWords.nothing : line} />
      <UnreadableRecords workspace={workspace} level={2} of={STOCK_KINDS} />
      <div className={styles.card}>
        {kinds.map((kind) => {
          const own = facts.groups.filter((group) => group.kind === kind);
          // Designs are many, and most are made for whoever asked: those nobody counted stand behind one fold.
          const [shown, rest] =
            kind === 'finished'
              ? [own.filter(({ isNoted }) => isNoted), own.filter(({ isNoted }) => !isNoted)]
              : [own, []];
          if (own.length === 0) return null;
          return (
            <section key={kind} aria-labelledby={`stock-${kind}-heading`}>
              <h2 className={styles.heading} id={`stock-${kind}-heading`}>
                {kindWords[kind]}
              </h2>
              {kind === 'paper' || kind === 'consumable'
                ? shown.map((group) => (
                    <StockList
                      key={group.id}
                      workspace={workspace}
                      id={`stock-${kind}`}
                      things={thingsOf(group, facts, workspace)}
                    />
                  ))
                : folds(shown, 3)}
              {rest.length > 0 && (
                <Disclosure
                  id="stock-uncounted"
                  level={3}
                  open={rest.some(({ things }) => things.some(({ item }) => isNoteBegun(item)))}
                  heading={stockroomWords.uncountedDesigns}
                  line={formatter.count(rest.length, 'design')}
                >
                  {folds(rest, 4)}
                </Disclosure>
              )}
            </section>
          );
        })}
      </div>
    </>
  );
}
