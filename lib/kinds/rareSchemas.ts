import { rateTakenSchema } from '@/shared/schemas/learnedEvents';
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
import { pressTestSchema, washCheckSchema } from '@/shared/schemas/pressLog';
import { priceListVersionSchema } from '@/shared/schemas/priceList';
import { runSchema } from '@/shared/schemas/run';
import {
  blankFaultSchema,
  hoursSchema,
  pressingSchema,
  runActualSchema,
  runStepSchema,
  sheetsPrintedSchema,
} from '@/shared/schemas/runEvents';
import { runStandardSchema, supplyOrderSchema } from '@/shared/schemas/runPapers';
import { dayCloseSchema, stallPlanSchema } from '@/shared/schemas/stallPapers';
import { buyingListSchema, consumableSchema, supplierSchema } from '@/shared/schemas/supply';
import { faultClaimSchema, goodsInSchema } from '@/shared/schemas/supplyEvents';

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
