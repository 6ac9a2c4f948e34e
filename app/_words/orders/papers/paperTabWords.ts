import type { WithdrawalReason } from '@/shared/schemas/entries';

/** The papers of an order as tabs name them. */
export const paperTabWords = {
  quote: 'Quote',
  confirmation: 'Confirmation',
  proof: 'Proof',
  paymentRequest: 'Requests',
  invoice: 'Invoice',
  receipt: 'Receipt',
  creditNote: 'Credit note',
  deliveryNote: 'Delivery note',
  careCard: 'Care card',
} as const;

export type PaperTab = keyof typeof paperTabWords;

/** One of them inside a sentence. */
export const onePaperWords: Readonly<Record<Exclude<PaperTab, 'careCard'>, string>> = {
  quote: 'quote',
  confirmation: 'confirmation',
  proof: 'proof',
  paymentRequest: 'request',
  invoice: 'invoice',
  receipt: 'receipt',
  creditNote: 'credit note',
  deliveryNote: 'delivery note',
};

/** Why a paper was withdrawn. */
export const withdrawalWords: Readonly<Record<WithdrawalReason, string>> = {
  mistake: 'A mistake is in it',
  otherWish: 'The customer wants something else',
  sentTwice: 'It went out twice',
  other: 'Another reason',
};
