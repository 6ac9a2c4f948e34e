'use client';

import { useMemo } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type OrderBook, useOrderBook } from '@/app/_orderBook/useOrderBook';
import { paymentsOf } from '@/lib/orders/money/payments';
import { isOfOrders } from '@/lib/orders/orderFacts';
import { yearOfDay, yearSpan } from '@/lib/year/yearSpan';
import { type YearNoted, type YearStanding, yearStanding } from '@/lib/year/yearStanding';

/** A year as its screen has it. */
export interface YearOnScreen {
  readonly book: OrderBook;
  readonly standing: YearStanding;
  /** Those of which something is noted, and this one; the newest first. */
  readonly years: readonly number[];
}

/** Folds what was noted of one year. */
export function useYear(workspace: ReadyWorkspace, year: number, firstMonth: number): YearOnScreen {
  const book = useOrderBook(workspace);
  const { entries, papers, happened, workshop, kinds, shops, stallDays, runs } = workspace;
  const noted = useMemo(
    () => notedOf({ entries, papers, happened, workshop, kinds, shops, stallDays, runs }, book),
    [entries, papers, happened, workshop, kinds, shops, stallDays, runs, book],
  );
  const standing = useMemo(
    () => yearStanding(noted, yearSpan(year, firstMonth), book.today),
    [noted, year, firstMonth, book.today],
  );
  const years = useMemo(() => {
    const days = daysOf(noted).map((day) => yearOfDay(day, firstMonth));
    return [...new Set([...days, year, yearOfDay(book.today, firstMonth)])].toSorted((a, b) => b - a);
  }, [noted, year, firstMonth, book.today]);
  return { book, standing, years };
}

// Helpers

type Told = Pick<
  ReadyWorkspace,
  'entries' | 'papers' | 'happened' | 'workshop' | 'kinds' | 'shops' | 'stallDays' | 'runs'
>;

function notedOf(
  { entries, papers, happened, workshop, kinds, shops, stallDays, runs }: Told,
  book: OrderBook,
): YearNoted {
  const channelKept = (id: string | null | undefined) =>
    id != null && workshop.channels.some((channel) => channel.id === id) ? id : null;
  const { overheadPerYear, overheadHours } = workshop.rates;
  return {
    currency: workshop.currency,
    payments: paymentsOf(happened.filter(isOfOrders)),
    orderOf: book.of,
    orders: book.board,
    closes: papers.dayClose,
    plans: papers.stallPlan,
    shopPayments: entries.shopPayment,
    statements: entries.shopStatement,
    channelOf: ({ kind, id }) => {
      if (kind === 'shop') return channelKept(shops[id]?.channelId);
      if (kind === 'stallDay') return channelKept(stallDays[id]?.channelId);
      const order = kinds.order.bodies[id];
      const first = order?.jobIds.map((jobId) => book.jobOf(jobId)).find((kept) => kept !== null);
      return channelKept(order?.channelId ?? first?.job.channelId);
    },
    expenses: entries.expense,
    goodsIn: entries.goodsIn,
    claims: entries.faultClaim,
    hours: entries.hours,
    runSteps: entries.runStep,
    standards: papers.runStandard,
    runs,
    presses: workshop.presses,
    printers: workshop.printers,
    pressings: entries.pressing,
    sheetsPrinted: entries.sheetsPrinted,
    jobOf: (jobId) => book.jobOf(jobId)?.job ?? null,
    dayOf: (at) => dayOf(new Date(at)),
    taxInside: (shopId) => {
      const channel = workshop.channels.find(({ id }) => id === shops[shopId]?.channelId);
      if (channel === undefined || channel.taxMode === null) return null;
      const share = channel.tax?.value ?? null;
      if (channel.taxMode !== 'inside') return 0;
      return share === null ? null : share / (1 + share);
    },
    overheadPerHour:
      overheadPerYear === null || overheadHours === null || overheadHours.value <= 0
        ? null
        : overheadPerYear.value / overheadHours.value,
    wearInOverhead: workshop.policy.wearInOverhead,
    stock: null,
  };
}

const daysOf = (noted: YearNoted): readonly string[] => [
  ...noted.payments.map(({ entry }) => entry.body.day),
  ...[...noted.expenses, ...noted.goodsIn, ...noted.hours, ...noted.shopPayments].map(({ body }) => body.day),
  ...noted.closes.flatMap(({ body }) => body.days),
];
