'use client';

import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { factsOfRuns } from '@/lib/making/runFacts';
import { type Reserved, reserved } from '@/lib/stock/reserved';
import { standardNeeds } from '@/lib/stock/standardNeeds';
import { stockKey } from '@/lib/stock/stockKey';
import { type StockGroup, stockroom } from '@/lib/stock/stockroom';
import { type PileValue, stockValue } from '@/lib/stock/stockValue';

/** Everything that lies in stock, what it cost and what is kept for work. */
interface StockroomFacts {
  readonly groups: readonly StockGroup[];
  readonly values: readonly PileValue[];
  /** By the key of the thing; none of what no work asks for. */
  readonly reserved: ReadonlyMap<string, Reserved>;
}

/** Worked out again only when something was noted or a document changed. */
export function useStockroom(workspace: ReadyWorkspace): StockroomFacts {
  const { piles, blanks, workshop, consumables, jobs, runs, papers, entries } = workspace;
  const { stockMove, stockTransfer, stockCount, runStep } = entries;
  const groups = useMemo(
    () => stockroom({ piles, blanks, workshop, consumables, jobs }),
    [piles, blanks, workshop, consumables, jobs],
  );
  const values = useMemo(
    () => stockValue([...stockMove, ...stockTransfer, ...stockCount]),
    [stockMove, stockTransfer, stockCount],
  );
  const kept = useMemo(() => {
    const needs = factsOfRuns(runs, runStep, papers.runStandard).flatMap(({ run, isClosed, standard }) =>
      run.archivedOn !== null || isClosed || standard === null ? [] : standardNeeds(standard.body),
    );
    return new Map(reserved(piles, needs).map((one) => [stockKey(one.item), one]));
  }, [piles, runs, papers.runStandard, runStep]);
  return { groups, values, reserved: kept };
}
