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
import {
  type RunStandard,
  runStandardSchema,
  type SupplyOrder,
  supplyOrderSchema,
} from '@/shared/schemas/runPapers';
import { type DayClose, dayCloseSchema, type StallPlan, stallPlanSchema } from '@/shared/schemas/stallPapers';

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
/** Made of it is a file that the customer gets; the paper is that file, so none is kept without. */
const asFile = { ...first, needsFile: true } as const;
/** Tax offices want invoices numbered without a gap, which two devices that cannot ask each other only do apart. */
const numbered = { ...asFile, numbering: 'device' } as const;

const quote: KindDescriptor<Quote, 'issued'> = { ...numbered, word: 'quote', schema: quoteSchema };
const confirmation: KindDescriptor<Confirmation, 'issued'> = {
  ...numbered,
  word: 'order confirmation',
  schema: confirmationSchema,
};
const paymentRequest: KindDescriptor<PaymentRequest, 'issued'> = {
  ...numbered,
  word: 'payment request',
  schema: paymentRequestSchema,
};
const invoice: KindDescriptor<Invoice, 'issued'> = { ...numbered, word: 'invoice', schema: invoiceSchema };
const receipt: KindDescriptor<Receipt, 'issued'> = { ...numbered, word: 'receipt', schema: receiptSchema };
const creditNote: KindDescriptor<CreditNote, 'issued'> = {
  ...numbered,
  word: 'credit note',
  schema: creditNoteSchema,
};
const proof: KindDescriptor<Proof, 'issued'> = { ...numbered, word: 'proof sheet', schema: proofSchema };
const deliveryNote: KindDescriptor<DeliveryNote, 'issued'> = {
  ...numbered,
  word: 'delivery note',
  schema: deliveryNoteSchema,
};

const stallPlan: KindDescriptor<StallPlan, 'issued'> = {
  ...first,
  word: 'stall plan',
  schema: stallPlanSchema,
};
const dayClose: KindDescriptor<DayClose, 'issued'> = { ...first, word: 'day close', schema: dayCloseSchema };

const runStandard: KindDescriptor<RunStandard, 'issued'> = {
  ...first,
  word: 'standard of a run',
  schema: runStandardSchema,
};
const supplyOrder: KindDescriptor<SupplyOrder, 'issued'> = {
  ...asFile,
  word: 'order to a supplier',
  schema: supplyOrderSchema,
};

/** The papers of an order. */
const orderPaperKinds = {
  quote,
  confirmation,
  paymentRequest,
  invoice,
  receipt,
  creditNote,
  proof,
  deliveryNote,
} as const;

/** Every kind of paper that goes out, under the name its records bear. */
export const paperKinds = {
  priceListVersion,
  ...orderPaperKinds,
  stallPlan,
  dayClose,
  runStandard,
  supplyOrder,
} as const;

type PaperKind = keyof typeof paperKinds;

export type OrderPaperKind = keyof typeof orderPaperKinds;

/** What a paper of each kind says. */
export type PaperBodies = {
  readonly [Kind in PaperKind]: ReturnType<(typeof paperKinds)[Kind]['schema']['parse']>;
};
