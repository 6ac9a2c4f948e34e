import type { LossReason, OrderGate, OrderNumber, OrderStep } from '@/shared/schemas/orderEvents';
import { type OrderMoney, orderMoney } from './money/orderMoney';
import type { ArtworkVersion, NotedOf, OrderFacts, OutOf } from './orderFacts';
import { orderTrack, type TrackStage } from './orderTrack';
import { type OrderState, placeOf } from './stepOrder';
import { type StepStanding, type Walked, walkOrder } from './walkOrder';

/** Where it is put aside; `open` where it is not. */
type OrderSide =
  | { readonly side: 'open' }
  | { readonly side: 'held' | 'cancelled'; readonly since: string; readonly note: string }
  | { readonly side: 'lost'; readonly since: string; readonly why: LossReason; readonly note: string };

type Told<What extends OrderStep['what']> = Extract<OrderStep, { readonly what: What }> & {
  readonly entryId: string;
  readonly day: string;
};

interface ArtworkStanding extends ArtworkVersion {
  /** The version that was approved last; null where none was. */
  readonly approvedVersion: number | null;
  readonly holds: boolean;
}

/** What all that was noted of an order comes to. */
export interface OrderStanding {
  readonly orderId: string;
  /** Null where no enquiry is in force. */
  readonly number: OrderNumber | null;
  readonly enquiredOn: string | null;
  readonly state: OrderState;
  readonly side: OrderSide;
  readonly track: readonly TrackStage[];
  /** Every moving step in the order it was noted in. */
  readonly steps: readonly StepStanding[];
  /** Steps noted before their gates were open, which do not count yet. */
  readonly tooEarly: readonly StepStanding[];
  readonly gates: Walked['gates'];
  readonly agreed: Walked['agreed'];
  readonly acceptance: Told<'accepted'> | null;
  /** Accepted after the day the quote was valid until. */
  readonly isAcceptedLate: boolean;
  /** Accepted, and the quote is not on this device. */
  readonly isQuoteMissing: boolean;
  /** The quote in force that went out last. */
  readonly lastQuote: OutOf<'quote'> | null;
  /** A version went out after the accepted one. */
  readonly isQuotedAnew: boolean;
  readonly artworks: readonly ArtworkStanding[];
  readonly revisions: { readonly used: number; readonly included: number; readonly beyond: number };
  readonly changes: readonly Told<'change'>[];
  readonly reprints: readonly Told<'reprint'>[];
  /** Kept and shown, whatever became of the order. */
  readonly overrides: readonly (Told<'override'> & { readonly gate: OrderGate })[];
  readonly reminders: readonly Told<'reminded'>[];
  readonly money: OrderMoney;
}

/** Folds what happened to one order. Nothing of it is kept: the same entries give the same standing on every device. */
export function orderStanding(facts: OrderFacts): OrderStanding {
  const { orderId, order, happened, artworks, habits } = facts;
  const walked = walkOrder(facts);
  const events = happened.flatMap((one) => (one.kind === 'orderEvent' ? [one] : []));
  const enquiry = told(events, 'enquired')[0];
  const held = walked.steps.filter(({ holdsSince }) => holdsSince !== null);
  const acceptance =
    told(events, 'accepted').findLast(({ entryId }) => held.some((one) => one.entryId === entryId)) ?? null;
  const quotes = happened.flatMap((one) => (one.kind === 'quote' && !one.withdrawn ? [one] : []));
  const lastQuote = quotes.at(-1) ?? null;
  const money = orderMoney(facts, walked);
  const used = told(events, 'revised').length;
  const included = order.revisionsIncluded ?? habits.revisionsIncluded;
  const state = stateOf(walked, money);
  return {
    orderId,
    number: enquiry?.number ?? null,
    enquiredOn: enquiry?.day ?? null,
    state,
    side: sideOf(events),
    track: orderTrack(facts, walked, state),
    steps: walked.steps,
    tooEarly: walked.steps.filter(({ holdsSince, fault }) => holdsSince === null && fault === null),
    gates: walked.gates,
    agreed: walked.agreed,
    acceptance,
    isAcceptedLate:
      acceptance !== null && walked.agreed !== null && acceptance.day > walked.agreed.quote.body.validUntil,
    isQuoteMissing: walked.isAccepted && walked.agreed === null,
    lastQuote,
    isQuotedAnew: walked.agreed !== null && lastQuote !== null && lastQuote.id !== walked.agreed.quote.id,
    artworks: artworks.map(({ artworkId, version }) => {
      const approvedVersion = walked.approved.get(artworkId) ?? null;
      return { artworkId, version, approvedVersion, holds: approvedVersion === version };
    }),
    revisions: { used, included, beyond: Math.max(0, used - included) },
    changes: told(events, 'change'),
    reprints: told(events, 'reprint'),
    overrides: told(events, 'override'),
    reminders: told(events, 'reminded'),
    money,
  };
}

// Helpers

function stateOf({ steps, gates }: Walked, { isPaid }: OrderMoney): OrderState {
  const furthest = Math.max(
    0,
    ...steps.flatMap(({ step, holdsSince }) => (holdsSince === null ? [] : [placeOf(step.what)])),
  );
  const step = steps.find((one) => one.holdsSince !== null && placeOf(one.step.what) === furthest)?.step.what;
  if (step === undefined || step === 'enquired') return 'enquiry';
  if (step === 'delivered' && isPaid) return 'paid';
  const isReady = gates.deposit !== 'shut' && gates.approval !== 'shut';
  return step === 'accepted' && isReady ? 'ready' : step;
}

function sideOf(events: readonly NotedOf<'orderEvent'>[]): OrderSide {
  let side: OrderSide = { side: 'open' };
  for (const { body } of events) {
    const { step, day } = body;
    if (step.what === 'held' || step.what === 'cancelled')
      side = { side: step.what, since: day, note: step.note };
    else if (step.what === 'lost') side = { side: 'lost', since: day, why: step.why, note: step.note };
    else if (step.what === 'resumed' && side.side === 'held') side = { side: 'open' };
    else if (step.what === 'reopened') side = { side: 'open' };
  }
  return side;
}

function told<What extends OrderStep['what']>(
  events: readonly NotedOf<'orderEvent'>[],
  what: What,
): readonly Told<What>[] {
  return events.flatMap(({ id, body }) =>
    isOf(body.step, what) ? [{ ...body.step, entryId: id, day: body.day }] : [],
  );
}

const isOf = <What extends OrderStep['what']>(
  step: OrderStep,
  what: What,
): step is Extract<OrderStep, { readonly what: What }> => step.what === what;
