'use client';

import { useMemo } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useToday } from '@/app/_clock/useToday';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import {
  type ArtworkVersion,
  isOfOrders,
  type OrderFacts,
  type OrderHabits,
  orderFacts,
} from '@/lib/orders/orderFacts';
import { wantedOnOf } from '@/lib/quotes/wantedOnOf';
import type { Order } from '@/shared/schemas/order';

/** Every order with what happened to it. */
export interface OrderBook {
  readonly today: string;
  /** Open ones and closed. */
  readonly board: readonly BoardOrder[];
  /** Null where there is no such order. */
  readonly of: (orderId: string) => BoardOrder | null;
  /** Null where there is no such job. */
  readonly jobOf: (jobId: string) => JobRecord | null;
}

/** Folds what happened to every order; an order of which nothing changed stays the same object. */
export function useOrderBook(workspace: ReadyWorkspace): OrderBook {
  const today = useToday();
  const { jobs, artworks, kinds, happened, workshop } = workspace;
  const orders = kinds.order.bodies;
  const { currency, quoting } = workshop;
  const habits = useMemo(
    (): OrderHabits => ({
      currency,
      revisionsIncluded: quoting.revisionsIncluded,
      creditDays: quoting.creditDays,
      dayOf: (at) => dayOf(new Date(at)),
    }),
    [currency, quoting.revisionsIncluded, quoting.creditDays],
  );
  const jobsById = useMemo(() => new Map(jobs.map((kept) => [kept.id, kept])), [jobs]);
  const facts = useMemo(() => {
    const artworksOfJob = (jobId: string): readonly ArtworkVersion[] =>
      printedBy(jobsById.get(jobId)).flatMap((artworkId) => {
        const artwork = artworks[artworkId];
        return artwork === undefined ? [] : [{ artworkId, version: artwork.version }];
      });
    const ofOrders = happened.filter(isOfOrders);
    const withDays = Object.fromEntries(
      Object.entries(orders).map(([id, order]) => [id, withWantedDay(order, jobsById)]),
    );
    lastFacts = orderFacts({ orders: withDays, artworksOfJob, happened: ofOrders, habits }, lastFacts);
    return lastFacts;
  }, [orders, jobsById, artworks, happened, habits]);
  return useMemo(() => {
    lastBoard = boardOrders(facts.values(), today, lastBoard);
    const byId = new Map(lastBoard.map((order) => [order.facts.orderId, order]));
    return {
      today,
      board: lastBoard,
      of: (orderId) => byId.get(orderId) ?? null,
      jobOf: (jobId) => jobsById.get(jobId) ?? null,
    };
  }, [facts, today, jobsById]);
}

// Helpers

/** As they were sorted and folded last, on whichever screen. */
let lastFacts: ReadonlyMap<string, OrderFacts> = new Map();
let lastBoard: readonly BoardOrder[] = [];

/** The same object as long as order and day are. */
const dated = new WeakMap<Order, Order>();

/** An order without a day of its own is wanted when its jobs are: so all screens go by one day. */
function withWantedDay(order: Order, jobs: ReadonlyMap<string, JobRecord>): Order {
  if (order.wantedOn !== null) return order;
  const wantedOn = wantedOnOf(
    order,
    order.jobIds.flatMap((id) => jobs.get(id)?.job ?? []),
  );
  if (wantedOn === null) return order;
  const before = dated.get(order);
  if (before?.wantedOn === wantedOn) return before;
  const after = { ...order, wantedOn };
  dated.set(order, after);
  return after;
}

function printedBy(kept: JobRecord | undefined): readonly string[] {
  const placements = kept?.job.lines.flatMap((line) => line.placements) ?? [];
  return [...new Set(placements.flatMap(({ artworkId }) => artworkId ?? []))];
}
