'use client';

import { useEffect } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useBench } from '@/app/_orderBook/useBench';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import type { StockNeed } from '@/lib/stock/reserved';
import { useOpenNeeds } from './useOpenNeeds';

type NeedsToldProps = Readonly<{
  workspace: ReadyWorkspace;
  onNeeds: (needs: readonly StockNeed[]) => void;
}>;

/** Shows nothing: tells what all open work is going to use, with the day of each, once that is worked out. */
export function NeedsTold({ workspace, onNeeds }: NeedsToldProps) {
  const book = useOrderBook(workspace);
  const { latestOf } = useBench(workspace, book);
  const { answer } = useOpenNeeds(workspace, { ...book, latestOf });
  useEffect(() => {
    if (answer !== null) onNeeds(answer.needs);
  }, [answer, onNeeds]);
  return null;
}
