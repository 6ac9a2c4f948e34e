import type { OrderGate, OrderStep } from '@/shared/schemas/orderEvents';

/** Steps that bring an order on, in their order. What else may be noted of it moves it aside or tells about it. */
const stepOrder = [
  'enquired',
  'quoted',
  'accepted',
  'blanksOrdered',
  'goodsIn',
  'scheduled',
  'printed',
  'pressed',
  'checked',
  'packed',
  'delivered',
  'closed',
] as const;

export type StepName = (typeof stepOrder)[number];
/** How far an order is: the furthest step whose gates hold, and what money and approval make of it. */
export type OrderState =
  | Exclude<StepName, 'enquired'>
  | 'enquiry'
  /** Accepted, deposit and approval are there, and nothing is made yet. */
  | 'ready'
  /** Delivered, and nothing is owed. */
  | 'paid';

export type MovingStep = Extract<OrderStep, { readonly what: StepName }>;

export const isMoving = (step: OrderStep): step is MovingStep => placeOf(step.what) !== -1;

const places: readonly string[] = stepOrder;

/** @returns how far a step brings an order; −1 where it does not move it. */
export const placeOf = (what: OrderStep['what']): number => places.indexOf(what);

/** @returns whether a step makes something for the order, so that its pictures must be approved. */
export const isMaking = (what: StepName): boolean =>
  what === 'blanksOrdered' || what === 'printed' || what === 'pressed';

const makingGates: readonly OrderGate[] = ['acceptance', 'deposit', 'approval'];

/** What must hold before a step counts: whoever leaves a step out skips none of its gates. */
export function gatesOf(what: StepName): readonly OrderGate[] {
  if (placeOf(what) < placeOf('blanksOrdered')) return [];
  return placeOf(what) < placeOf('delivered') ? makingGates : [...makingGates, 'balance'];
}
