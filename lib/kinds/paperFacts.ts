import type { KindFacts } from '@/lib/stored/registry';
import type { RunStandard, SupplyOrder } from '@/shared/schemas/making/runPapers';
import type {
  Confirmation,
  CreditNote,
  DeliveryNote,
  Invoice,
  PaymentRequest,
  Proof,
  Quote,
  Receipt,
} from '@/shared/schemas/orderPapers';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';

const first = {
  nature: 'issued',
  version: 1,
  steps: {},
  // What went out keeps what it promised, whatever becomes of what it was made from.
  linksOf: () => [],
} as const;

const priceListVersion: KindFacts<PriceListVersion, 'issued'> = {
  ...first,
  word: 'version of a price list',
};
/** Made of it is a file that the customer gets; the paper is that file, so none is kept without. */
const asFile = { ...first, needsFile: true } as const;
/** Tax offices want invoices numbered without a gap, which two devices that cannot ask each other only do apart. */
const numbered = { ...asFile, numbering: 'device' } as const;

const quote: KindFacts<Quote, 'issued'> = { ...numbered, word: 'quote' };
const confirmation: KindFacts<Confirmation, 'issued'> = {
  ...numbered,
  word: 'order confirmation',
};
const paymentRequest: KindFacts<PaymentRequest, 'issued'> = {
  ...numbered,
  word: 'payment request',
};
const invoice: KindFacts<Invoice, 'issued'> = { ...numbered, word: 'invoice' };
const receipt: KindFacts<Receipt, 'issued'> = { ...numbered, word: 'receipt' };
const creditNote: KindFacts<CreditNote, 'issued'> = {
  ...numbered,
  word: 'credit note',
};
const proof: KindFacts<Proof, 'issued'> = { ...numbered, word: 'proof sheet' };
const deliveryNote: KindFacts<DeliveryNote, 'issued'> = {
  ...numbered,
  word: 'delivery note',
};

const stallPlan: KindFacts<StallPlan, 'issued'> = {
  ...first,
  word: 'stall plan',
};
const dayClose: KindFacts<DayClose, 'issued'> = { ...first, word: 'day close' };

const runStandard: KindFacts<RunStandard, 'issued'> = {
  ...first,
  word: 'standard of a run',
};
const supplyOrder: KindFacts<SupplyOrder, 'issued'> = {
  ...asFile,
  word: 'order to a supplier',
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

/** What is known of every kind of paper that goes out, under the name its records bear; schemas in `rareSchemas.ts`. */
export const paperFacts = {
  priceListVersion,
  ...orderPaperKinds,
  stallPlan,
  dayClose,
  runStandard,
  supplyOrder,
} as const;

export type OrderPaperKind = keyof typeof orderPaperKinds;
