'use client';

import { useEffect, useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import { neededBefore } from '@/lib/openWork/neededBefore';
import type { BuyingList } from '@/shared/schemas/making/supply';
import { useOpenNeeds } from './useOpenNeeds';

type KeptByOthersProps = Readonly<{
  workspace: ReadyWorkspace;
  works: BuyingList['works'];
  onKept: (kept: RunQuestion['kept']) => void;
}>;

/** Shows nothing: tells what of the stock is kept for other work, once that is worked out. */
export function KeptByOthers({ workspace, works, onKept }: KeptByOthersProps) {
  const { answer } = useOpenNeeds(workspace, useOrderBook(workspace));
  const kept = useMemo(() => (answer === null ? null : neededBefore(answer.needs, works)), [answer, works]);
  useEffect(() => {
    if (kept !== null) onKept(kept);
  }, [kept, onKept]);
  return null;
}
