import { rateTakenSchema } from '@/shared/schemas/making/learnedEvents';
import { pressTestSchema, washCheckSchema } from '@/shared/schemas/making/pressLog';
import { runSchema } from '@/shared/schemas/making/run';
import {
  blankFaultSchema,
  hoursSchema,
  pressingSchema,
  runActualSchema,
  runStepSchema,
  sheetsPrintedSchema,
} from '@/shared/schemas/making/runEvents';
import { runStandardSchema, supplyOrderSchema } from '@/shared/schemas/making/runPapers';
import { buyingListSchema, consumableSchema, supplierSchema } from '@/shared/schemas/making/supply';
import { faultClaimSchema, goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import {
  confirmationSchema,
  creditNoteSchema,
  deliveryNoteSchema,
  invoiceSchema,
  paymentRequestSchema,
  proofSchema,
  quoteSchema,
  receiptSchema,
} from '@/shared/schemas/orderPapers';
import { priceListVersionSchema } from '@/shared/schemas/priceList';
import { dayCloseSchema, stallPlanSchema } from '@/shared/schemas/stallPapers';

/** Schemas of kinds that many devices hold nothing of: a page fetches them while its store opens. */
export const rareSchemas = {
  drafts: {
    supplier: supplierSchema,
    consumable: consumableSchema,
    buyingList: buyingListSchema,
    run: runSchema,
  },
  entries: {
    pressing: pressingSchema,
    blankFault: blankFaultSchema,
    sheetsPrinted: sheetsPrintedSchema,
    runActual: runActualSchema,
    runStep: runStepSchema,
    hours: hoursSchema,
    pressTest: pressTestSchema,
    washCheck: washCheckSchema,
    goodsIn: goodsInSchema,
    faultClaim: faultClaimSchema,
    rateTaken: rateTakenSchema,
  },
  papers: {
    priceListVersion: priceListVersionSchema,
    quote: quoteSchema,
    confirmation: confirmationSchema,
    paymentRequest: paymentRequestSchema,
    invoice: invoiceSchema,
    receipt: receiptSchema,
    creditNote: creditNoteSchema,
    proof: proofSchema,
    deliveryNote: deliveryNoteSchema,
    stallPlan: stallPlanSchema,
    dayClose: dayCloseSchema,
    runStandard: runStandardSchema,
    supplyOrder: supplyOrderSchema,
  },
} as const;
