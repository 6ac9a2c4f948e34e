import type { LossReason, OrderGate, OrderStep, Payment, PaymentWay } from '@/shared/schemas/orderEvents';

/** What happened, as a button and a line of the timeline say it. */
export const stepWords: Readonly<Record<OrderStep['what'], string>> = {
  enquired: 'Enquired',
  quoted: 'Quoted',
  accepted: 'Accepted',
  approved: 'Approved',
  revised: 'Another proof wished',
  blanksOrdered: 'Blanks ordered',
  goodsIn: 'Blanks came in',
  scheduled: 'Scheduled',
  printed: 'Printed',
  pressed: 'Pressed',
  checked: 'Checked',
  packed: 'Packed',
  delivered: 'Delivered',
  closed: 'Closed',
  held: 'Put on hold',
  resumed: 'Gone on with',
  cancelled: 'Cancelled',
  reopened: 'Opened again',
  lost: 'Lost',
  override: 'Gone on in spite of it',
  change: 'Change of the order',
  reprint: 'Made again',
  reminded: 'Reminded',
};

/** What has to be there before a step counts. */
export const gateWords: Readonly<Record<OrderGate, string>> = {
  acceptance: 'the yes to the quote',
  deposit: 'the deposit',
  approval: 'the approved proof',
  balance: 'the balance',
};

/** @returns gates in one phrase: “the deposit and the approved proof”. */
export const gatesInWords = (gates: readonly OrderGate[]): string =>
  new Intl.ListFormat('en').format(gates.map((gate) => gateWords[gate]));

/** @returns what opens a step that is locked. */
export const opensWords = (gates: readonly OrderGate[]): string =>
  `opens once ${gatesInWords(gates)} ${gates.length === 1 ? 'is' : 'are'} here`;

/** @returns why a step that was noted does not count. */
export const tooEarlyWords = (
  what: OrderStep['what'],
  on: string,
  gates: readonly OrderGate[],
): { readonly sentence: string; readonly detail: string } => ({
  sentence: `“${stepWords[what]}”, noted for ${on}, does not count yet: ${gatesInWords(gates)} ${gates.length === 1 ? 'is' : 'are'} not here.`,
  detail: 'It counts from the day that comes. Take it back if it did not happen.',
});

export const answerWayWords: Readonly<
  Record<Extract<OrderStep, { readonly what: 'accepted' }>['how'], string>
> = {
  inPerson: 'In person',
  phone: 'By phone',
  message: 'By message',
  signedPaper: 'On a signed paper',
  link: 'Through a link',
};

export const lossWords: Readonly<Record<LossReason, string>> = {
  price: 'The price',
  date: 'The day',
  noAnswer: 'No answer came',
  rights: 'Rights to the picture',
  other: 'Something else',
};

type Reprint = Extract<OrderStep, { readonly what: 'reprint' }>;
export const causeWords: Readonly<Record<Reprint['cause'], string>> = {
  ourFault: 'Our fault',
  blankFault: 'Fault of the blank',
  approvedError: 'A fault in what was approved',
  carrier: 'Lost or damaged on the way',
  other: 'Something else',
};
export const payerWords: Readonly<Record<Reprint['payer'], string>> = {
  workshop: 'The workshop',
  supplier: 'The supplier',
  customer: 'The customer',
  carrier: 'The carrier',
};
/** Who usually pays for what; the maker decides. */
export const usualPayer: Readonly<Record<Reprint['cause'], Reprint['payer']>> = {
  ourFault: 'workshop',
  blankFault: 'supplier',
  approvedError: 'customer',
  carrier: 'carrier',
  other: 'workshop',
};

type Reminder = Extract<OrderStep, { readonly what: 'reminded' }>['of'];
export const reminderWords: Readonly<Record<Reminder, string>> = {
  answer: 'An answer to the quote',
  approval: 'The approval',
  deposit: 'The deposit',
  balance: 'The balance',
};

export const paymentWayWords: Readonly<Record<PaymentWay, string>> = {
  transfer: 'Transfer',
  card: 'Card',
  cash: 'Cash',
  cheque: 'Cheque',
  other: 'Another way',
};
export const paymentKindWords: Readonly<Record<Payment['kind'], string>> = {
  payment: 'It came',
  refund: 'Given back',
  reversal: 'Taken back by the bank',
};
