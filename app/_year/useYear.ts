'use client';

import { useCallback, useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Fetched, useLazy } from '@/app/_network/useLazy';
import { type OrderBook, useOrderBook } from '@/app/_orderBook/useOrderBook';
import { yearSpan } from '@/lib/year/yearSpan';
import type { YearStanding } from '@/lib/year/yearStanding';
import { laterParts } from './laterParts';
import { useInTurns } from './useInTurns';

/** A year as its screen has it. */
interface ReckonedYear {
  readonly book: OrderBook;
  /** Null until it is reckoned. */
  readonly standing: YearStanding | null;
  /** Those of which something is noted, and this one; the newest first. */
  readonly years: readonly number[];
  /** Whether what reckons is here. */
  readonly sums: Fetched<unknown>;
}

/** More than this is reckoned in turns. */
const AT_ONCE = 2_000;

/** Folds what was noted of one year. */
export function useYear(workspace: ReadyWorkspace, year: number, firstMonth: number): ReckonedYear {
  const book = useOrderBook(workspace);
  const sums = useLazy(laterParts.sums);
  const reckon = sums.kind === 'here' ? sums.value : null;
  const { entries, papers, happened, workshop, kinds, shops, stallDays, runs } = workspace;
  const span = useMemo(() => yearSpan(year, firstMonth), [year, firstMonth]);
  const begin = useCallback(
    () =>
      reckon?.(
        { entries, papers, happened, workshop, kinds, shops, stallDays, runs },
        book,
        span,
        firstMonth,
      ) ?? null,
    [reckon, entries, papers, happened, workshop, kinds, shops, stallDays, runs, book, span, firstMonth],
  );
  const reckoned = useInTurns(begin, happened.length > AT_ONCE);
  // That of another year is not shown under this one.
  const standing = reckoned?.standing.span === span ? reckoned.standing : null;
  const years = useMemo(
    () => [...new Set([...(reckoned?.years ?? []), year])].toSorted((one, other) => other - one),
    [reckoned, year],
  );
  return { book, standing, years, sums };
}
