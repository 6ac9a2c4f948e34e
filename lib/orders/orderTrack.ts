import { dayToKeep } from './dayToKeep';
import type { OrderFacts } from './orderFacts';
import { type OrderState, placeOf, type StepName } from './stepOrder';
import type { Walked } from './walkOrder';

const trackStages = ['enquiry', 'quoted', 'agreed', 'making', 'delivered', 'paid'] as const;

/** One of the six stretches of an order's way. */
export interface TrackStage {
  readonly stage: (typeof trackStages)[number];
  readonly place: 'past' | 'present' | 'ahead';
  /** The day it was reached; null where it is ahead or nobody noted a day. */
  readonly on: string | null;
  /** The day by which it is to be over; null where none was promised. */
  readonly by: string | null;
}

/** @returns the six stretches: those behind, the one the order is on, those ahead. */
export function orderTrack(facts: OrderFacts, walked: Walked, state: OrderState): readonly TrackStage[] {
  const { order, happened } = facts;
  const since = (what: StepName): string | null =>
    walked.steps
      .filter(({ step, holdsSince }) => holdsSince !== null && step.what === what)
      .reduce<string | null>((first, { holdsSince }) => first ?? holdsSince, null);
  const reached = (what: StepName): string | null =>
    walked.steps
      .filter(({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf(what))
      .reduce<string | null>((first, { holdsSince }) => earlier(first, holdsSince), null);
  const dates = (walked.agreed?.quote ?? happened.findLast((one) => one.kind === 'quote' && !one.withdrawn))
    ?.body;
  const promised = dates !== undefined && 'dates' in dates ? dates.dates : null;
  const invoice = happened.findLast((one) => one.kind === 'invoice' && !one.withdrawn);
  const ends: readonly Omit<TrackStage, 'place'>[] = [
    { stage: 'enquiry', on: since('enquired'), by: null },
    {
      stage: 'quoted',
      on: reached('quoted'),
      by: dates !== undefined && 'validUntil' in dates ? dates.validUntil : null,
    },
    { stage: 'agreed', on: walked.readySince ?? reached('blanksOrdered'), by: promised?.approveBy ?? null },
    { stage: 'making', on: reached('packed'), by: promised?.ready ?? null },
    { stage: 'delivered', on: reached('delivered'), by: dayToKeep(order, walked.agreed) },
    { stage: 'paid', on: walked.paidSince, by: invoice?.kind === 'invoice' ? invoice.body.dueOn : null },
  ];
  const present = trackStages.indexOf(presentOf(state));
  return ends.map((end, at) => ({
    ...end,
    place: at < present || isOver(state) ? 'past' : at === present ? 'present' : 'ahead',
    on: at > present && end.stage !== 'paid' ? null : end.on,
  }));
}

// Helpers

const isOver = (state: OrderState): boolean => state === 'paid' || state === 'closed';

/** The stretch whose end has not come. */
function presentOf(state: OrderState): TrackStage['stage'] {
  switch (state) {
    case 'enquiry':
      return 'enquiry';
    case 'quoted':
      return 'quoted';
    case 'accepted':
      return 'agreed';
    case 'ready':
    case 'blanksOrdered':
    case 'goodsIn':
    case 'scheduled':
    case 'printed':
    case 'pressed':
    case 'checked':
      return 'making';
    case 'packed':
      return 'delivered';
    case 'delivered':
    case 'paid':
    case 'closed':
      return 'paid';
    default:
      return state satisfies never;
  }
}

const earlier = (one: string | null, other: string | null): string | null =>
  one === null ? other : other === null ? one : one < other ? one : other;
