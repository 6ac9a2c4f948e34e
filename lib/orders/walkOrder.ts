import type { OrderGate } from '@/shared/schemas/orderEvents';
import { type AgreedSale, agreedSale } from './agreedSale';
import { type ApprovedVersions, approvalHolds, approvalsAfter } from './approvals';
import { emptyLedger, entered, type Ledger, totalMinor } from './ledger';
import type { NotedOf, OrderFacts, OutOf } from './orderFacts';
import { gatesOf, isMoving, type MovingStep } from './stepOrder';

/** A step as it was noted, and whether it counts. */
export interface StepStanding {
  readonly entryId: string;
  readonly step: MovingStep;
  /** The day it was noted for. */
  readonly day: string;
  /** The day from which it counts: its own, or that on which the last of its gates opened; null while it does not. */
  readonly holdsSince: string | null;
  /** Gates that are still shut for it. */
  readonly waitsFor: readonly OrderGate[];
  /** Gates that only an override opened. */
  readonly overridden: readonly OrderGate[];
  /** Why it does not count, whatever the gates. */
  readonly fault: StepFault | null;
}

/** The quote was withdrawn; it offered no such choice; the order was opened again after it was closed. */
type StepFault = 'quoteWithdrawn' | 'noSuchChoice' | 'reopened';

export interface Walked {
  readonly steps: readonly StepStanding[];
  /** What was accepted last; null where nothing was, or its quote is not here. */
  readonly agreed: AgreedSale | null;
  readonly isAccepted: boolean;
  readonly approved: ApprovedVersions;
  readonly ledger: Ledger;
  /** Gates as they stand now, for whatever is made next. */
  readonly gates: Readonly<Record<OrderGate, 'open' | 'overridden' | 'shut'>>;
  /** The day on which deposit and approval were both there first; null while they are not. */
  readonly readySince: string | null;
  /** The day on which everything owed had come; null while it has not. */
  readonly paidSince: string | null;
}

type Gates = Walked['gates'];

/**
 * Walks through what happened to an order. A step counts from the moment all its gates are open, at once or later,
 * and goes on counting: what was made is made, and money that goes back afterwards is told as owed.
 */
export function walkOrder(facts: OrderFacts): Walked {
  const { happened, artworks, habits } = facts;
  const quotes = new Map(happened.flatMap((one) => (one.kind === 'quote' ? [[one.id, one] as const] : [])));
  const proofs = new Map(happened.flatMap((one) => (one.kind === 'proof' ? [[one.id, one] as const] : [])));
  const noted: StepStanding[] = [];
  const overrides = new Set<OrderGate>();
  let [agreed, isAccepted]: [AgreedSale | null, boolean] = [null, false];
  let offered: OutOf<'quote'> | null = null;
  let approved: ApprovedVersions = new Map();
  let ledger = emptyLedger(orderCurrency(facts));
  let [readySince, paidSince]: [string | null, string | null] = [null, null];

  const stateOf = (gate: OrderGate, versions = artworks): Gates[OrderGate] =>
    holds(gate, versions) ? 'open' : overrides.has(gate) ? 'overridden' : 'shut';
  const holds = (gate: OrderGate, versions: OrderFacts['artworks']): boolean => {
    const sale = agreed ?? (offered === null ? null : agreedSale(offered, null));
    switch (gate) {
      case 'acceptance':
        return isAccepted;
      case 'deposit':
        return sale !== null && ledger.receivedMinor >= sale.depositMinor;
      case 'approval':
        return approvalHolds(approved, versions);
      case 'balance': {
        const owed = totalMinor(ledger, agreed);
        const isPaid = owed !== null && ledger.receivedMinor >= owed;
        return isPaid || ledger.isOnCredit || (habits.creditDays ?? 0) > 0;
      }
      default:
        return gate satisfies never;
    }
  };
  const standing = (step: StepStanding, day: string): StepStanding => {
    if (step.holdsSince !== null || step.fault !== null) return step;
    const versions = 'versions' in step.step ? step.step.versions : undefined;
    const states = gatesOf(step.step.what).map((gate) => ({ gate, state: stateOf(gate, versions) }));
    const named = (wanted: Gates[OrderGate]) =>
      states.flatMap(({ gate, state }) => (state === wanted ? [gate] : []));
    const waitsFor = named('shut');
    return waitsFor.length > 0
      ? { ...step, waitsFor }
      : { ...step, waitsFor, overridden: named('overridden'), holdsSince: later(step.day, day) };
  };
  const noteStep = ({ id, body }: NotedOf<'orderEvent'>): void => {
    const { step, day } = body;
    if (step.what === 'override') overrides.add(step.gate);
    if (step.what === 'reopened') {
      for (const [at, one] of noted.entries()) {
        if (one.step.what === 'closed') noted[at] = { ...one, holdsSince: null, fault: 'reopened' };
      }
    }
    if (!isMoving(step)) return;
    const quote = 'paperId' in step ? quotes.get(step.paperId) : undefined;
    const sale =
      step.what === 'accepted' && quote !== undefined ? agreedSale(quote, step.alternativeId) : null;
    const fault: StepFault | null =
      quote?.withdrawn === true
        ? 'quoteWithdrawn'
        : step.what === 'accepted' && quote !== undefined && sale === null
          ? 'noSuchChoice'
          : null;
    if (step.what === 'accepted' && fault === null) [agreed, isAccepted] = [sale, true];
    noted.push({ entryId: id, step, day, holdsSince: null, waitsFor: [], overridden: [], fault });
  };

  for (const one of happened) {
    const day = dayOf(one, habits.dayOf);
    if (one.kind === 'quote' && !one.withdrawn) offered = one;
    ledger = entered(ledger, one);
    approved = approvalsAfter(approved, one, proofs);
    if (one.kind === 'orderEvent') noteStep(one);
    for (const [at, step] of noted.entries()) noted[at] = standing(step, day);
    const isReady = (['acceptance', 'deposit', 'approval'] as const).every(
      (gate) => stateOf(gate) !== 'shut',
    );
    readySince = isReady ? (readySince ?? day) : null;
    const owed = totalMinor(ledger, agreed);
    paidSince = owed !== null && ledger.receivedMinor >= owed ? (paidSince ?? day) : null;
  }
  const gates: Gates = {
    acceptance: stateOf('acceptance'),
    deposit: stateOf('deposit'),
    approval: stateOf('approval'),
    balance: stateOf('balance'),
  };
  return { steps: noted, agreed, isAccepted, approved, ledger, gates, readySince, paidSince };
}

// Helpers

/** One currency an order: that of what was accepted, else of the last quote, else of the workshop. */
function orderCurrency({ happened, habits }: OrderFacts): string {
  const quotes = happened.flatMap((one) => (one.kind === 'quote' && !one.withdrawn ? [one] : []));
  const accepted = happened.flatMap((one) =>
    one.kind === 'orderEvent' && one.body.step.what === 'accepted' ? [one.body.step.paperId] : [],
  );
  const of = quotes.findLast(({ id }) => accepted.includes(id)) ?? quotes.at(-1);
  return of?.body.currency ?? habits.currency;
}

/** @returns the calendar day of what happened: noted, else that of its moment. */
export function dayOf(one: OrderFacts['happened'][number], dayOfMoment: (at: number) => string): string {
  if ('day' in one.body) return one.body.day;
  return 'issuedOn' in one.body ? one.body.issuedOn : dayOfMoment(one.at);
}

const later = (one: string, other: string): string => (one > other ? one : other);
