import type { KindDescriptor } from '@/lib/stored/registry';
import {
  type Confirmation,
  type CreditNote,
  confirmationSchema,
  creditNoteSchema,
  type DeliveryNote,
  deliveryNoteSchema,
  type Invoice,
  invoiceSchema,
  type PaymentRequest,
  type Proof,
  paymentRequestSchema,
  proofSchema,
  type Quote,
  quoteSchema,
  type Receipt,
  receiptSchema,
} from '@/shared/schemas/orderPapers';
import { type PriceListVersion, priceListVersionSchema } from '@/shared/schemas/priceList';

const first = {
  nature: 'issued',
  version: 1,
  steps: {},
  // What went out keeps what it promised, whatever becomes of what it was made from.
  linksOf: () => [],
} as const;

const priceListVersion: KindDescriptor<PriceListVersion, 'issued'> = {
  ...first,
  word: 'version of a price list',
  schema: priceListVersionSchema,
};
const quote: KindDescriptor<Quote, 'issued'> = { ...first, word: 'quote', schema: quoteSchema };
const confirmation: KindDescriptor<Confirmation, 'issued'> = {
  ...first,
  word: 'order confirmation',
  schema: confirmationSchema,
};
const paymentRequest: KindDescriptor<PaymentRequest, 'issued'> = {
  ...first,
  word: 'payment request',
  schema: paymentRequestSchema,
};
const invoice: KindDescriptor<Invoice, 'issued'> = { ...first, word: 'invoice', schema: invoiceSchema };
const receipt: KindDescriptor<Receipt, 'issued'> = { ...first, word: 'receipt', schema: receiptSchema };
const creditNote: KindDescriptor<CreditNote, 'issued'> = {
  ...first,
  word: 'credit note',
  schema: creditNoteSchema,
};
const proof: KindDescriptor<Proof, 'issued'> = { ...first, word: 'proof sheet', schema: proofSchema };
const deliveryNote: KindDescriptor<DeliveryNote, 'issued'> = {
  ...first,
  word: 'delivery note',
  schema: deliveryNoteSchema,
};

/** Every kind of paper that goes out, under the name its records bear. */
export const paperKinds = {
  priceListVersion,
  quote,
  confirmation,
  paymentRequest,
  invoice,
  receipt,
  creditNote,
  proof,
  deliveryNote,
} as const;

type PaperKind = keyof typeof paperKinds;

/** What a paper of each kind says. */
export type PaperBodies = {
  readonly [Kind in PaperKind]: ReturnType<(typeof paperKinds)[Kind]['schema']['parse']>;
};
