import type { OrderGate } from '@/shared/schemas/orderEvents';
import { agreedSale } from './agreedSale';
import { approvalsAfter } from './approvals';
import { type GateState, gateState, isPaid, type KnownSoFar, overrideOf } from './gateState';
import { emptyLedger, entered } from './ledger';
import { isPassedByMaking, madeBefore } from './madeBefore';
import type { Happening, NotedOf, OrderFacts, OutOf } from './orderFacts';
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

export interface Walked extends Pick<KnownSoFar, 'agreed' | 'isAccepted' | 'approved' | 'ledger'> {
  readonly steps: readonly StepStanding[];
  /** Gates as they stand now, for whatever is made next. */
  readonly gates: Readonly<Record<OrderGate, GateState>>;
  /** The day on which deposit and approval were both there; null while they are not. */
  readonly readySince: string | null;
  /** The day on which everything owed had come; null while it has not. */
  readonly paidSince: string | null;
}

/**
 * Walks through what happened to an order. A step counts from the moment all its gates are open, at once or later,
 * and goes on counting: what was made is made, and money that goes back afterwards is told as owed.
 */
export function walkOrder(facts: OrderFacts): Walked {
  const { happened, artworks, habits } = facts;
  const papers: PapersById = { quotes: byId(happened, 'quote'), proofs: byId(happened, 'proof') };
  const steps: StepStanding[] = [];
  let known: KnownSoFar = {
    ...{
      agreed: null,
      isAccepted: false,
      offered: null,
      approved: new Map(),
      overrides: [],
      passed: [],
    },
    ledger: emptyLedger(orderCurrency(facts)),
    creditDays: habits.creditDays,
  };
  let [readySince, paidSince]: [string | null, string | null] = [null, null];
  for (const one of happened) {
    const day = dayOf(one, habits.dayOf);
    known = knownAfter(known, one, papers);
    if (one.kind === 'orderEvent') noteStep(steps, one, papers);
    for (const [at, step] of steps.entries()) {
      if (step.holdsSince !== null || step.fault !== null) continue;
      const made = madeBefore(step.step.what, steps.slice(0, at));
      steps[at] = judged(step, known, { made, artworks }, day);
    }
    const isReady = readyGates.every((gate) => gateState(known, gate, artworks) !== 'shut');
    readySince = isReady ? (readySince ?? day) : null;
    paidSince = isPaid(known) ? (paidSince ?? day) : null;
  }
  const { agreed, isAccepted, approved, ledger } = known;
  const gates = {
    acceptance: gateState(known, 'acceptance', artworks),
    deposit: gateState(known, 'deposit', artworks),
    approval: gateState(known, 'approval', artworks),
    balance: gateState(known, 'balance', artworks),
  };
  return { steps, agreed, isAccepted, approved, ledger, gates, readySince, paidSince };
}

// Helpers

interface PapersById {
  readonly quotes: ReadonlyMap<string, OutOf<'quote'>>;
  readonly proofs: ReadonlyMap<string, OutOf<'proof'>>;
}

const readyGates: readonly OrderGate[] = ['acceptance', 'deposit', 'approval'];

function knownAfter(before: KnownSoFar, one: Happening, { quotes, proofs }: PapersById): KnownSoFar {
  const known: KnownSoFar = {
    ...before,
    ledger: entered(before.ledger, one),
    approved: approvalsAfter(before.approved, one, proofs),
  };
  if (one.kind === 'quote' && !one.withdrawn) return { ...known, offered: one };
  if (one.kind !== 'orderEvent') return known;
  const { step } = one.body;
  if (step.what === 'override') {
    const overrides = [...known.overrides, overrideOf(step.gate, known)];
    return { ...known, overrides, passed: [...known.passed, ...(step.versions ?? [])] };
  }
  if (step.what !== 'accepted' || faultOf(step, quotes) !== null) return known;
  const quote = quotes.get(step.paperId);
  const agreed = quote === undefined ? null : agreedSale(quote, step.alternativeId);
  return { ...known, agreed, isAccepted: true };
}

function noteStep(steps: StepStanding[], { id, body }: NotedOf<'orderEvent'>, { quotes }: PapersById): void {
  const { step, day } = body;
  if (step.what === 'reopened') {
    for (const [at, one] of steps.entries()) {
      if (one.step.what === 'closed') steps[at] = { ...one, holdsSince: null, fault: 'reopened' };
    }
  }
  if (!isMoving(step)) return;
  const fault = faultOf(step, quotes);
  steps.push({ entryId: id, step, day, holdsSince: null, waitsFor: [], overridden: [], fault });
}

function faultOf(step: MovingStep, quotes: PapersById['quotes']): StepFault | null {
  const quote = 'paperId' in step ? quotes.get(step.paperId) : undefined;
  if (quote === undefined) return null;
  if (quote.withdrawn) return 'quoteWithdrawn';
  return step.what === 'accepted' && agreedSale(quote, step.alternativeId) === null ? 'noSuchChoice' : null;
}

interface Judged extends Pick<OrderFacts, 'artworks'> {
  /** What the step goes on with (`madeBefore`). */
  readonly made: StepStanding | undefined;
}

/** @param artworks as they are now, for a step that names no versions */
function judged(
  step: StepStanding,
  known: KnownSoFar,
  { made, artworks }: Judged,
  day: string,
): StepStanding {
  const versions = ('versions' in step.step ? step.step.versions : undefined) ?? artworks;
  const states = gatesOf(step.step.what).map((gate) => ({
    gate,
    state:
      isPassedByMaking(gate) && made !== undefined ? passedBy(made, gate) : gateState(known, gate, versions),
  }));
  const named = (wanted: GateState) => states.flatMap(({ gate, state }) => (state === wanted ? [gate] : []));
  const waitsFor = named('shut');
  return waitsFor.length > 0
    ? { ...step, waitsFor }
    : { ...step, waitsFor, overridden: named('overridden'), holdsSince: later(step.day, day) };
}

/** What was made went through the gate: what goes on with it asks for it no second time. */
const passedBy = ({ overridden }: StepStanding, gate: OrderGate): GateState =>
  overridden.includes(gate) ? 'overridden' : 'open';

const byId = <Kind extends 'quote' | 'proof'>(
  happened: readonly Happening[],
  kind: Kind,
): ReadonlyMap<string, OutOf<Kind>> =>
  new Map(happened.flatMap((one) => (isPaper(one, kind) ? [[one.id, one] as const] : [])));

const isPaper = <Kind extends 'quote' | 'proof'>(
  one: Happening,
  kind: Kind,
): one is OutOf<Kind> & Happening => one.kind === kind;

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
function dayOf(one: OrderFacts['happened'][number], dayOfMoment: (at: number) => string): string {
  if ('day' in one.body) return one.body.day;
  return 'issuedOn' in one.body ? one.body.issuedOn : dayOfMoment(one.at);
}

const later = (one: string, other: string): string => (one > other ? one : other);
