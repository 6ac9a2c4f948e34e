import { toJSONSchema } from 'zod';
import { refuseMethod, tellMethods } from '@/app/_requests/refuseMethod';
import { rareSchemas } from '@/lib/kinds/rareSchemas';
import { artworkSchema } from '@/shared/schemas/artwork';
import { blankSchema } from '@/shared/schemas/blank';
import { customerSchema } from '@/shared/schemas/customer';
import { jobSchema } from '@/shared/schemas/job';
import { orderSchema } from '@/shared/schemas/order';
import { expenseSchema, orderEventSchema, paymentSchema, payoutSchema } from '@/shared/schemas/orderEvents';
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
import { jobInputSchema } from '@/shared/schemas/request';
import { workshopSchema } from '@/shared/schemas/workshop';

/**
 * JSON Schema of the request and of each document in it, as they may be sent, of all that an order is made of, and of all
 * that making and buying for it are.
 */
export function GET(): Response {
  const schemas = {
    request: jobInputSchema,
    workshop: workshopSchema,
    blank: blankSchema,
    artwork: artworkSchema,
    job: jobSchema,
    customer: customerSchema,
    order: orderSchema,
    orderEvent: orderEventSchema,
    payment: paymentSchema,
    payout: payoutSchema,
    expense: expenseSchema,
    quote: quoteSchema,
    confirmation: confirmationSchema,
    paymentRequest: paymentRequestSchema,
    invoice: invoiceSchema,
    receipt: receiptSchema,
    creditNote: creditNoteSchema,
    proof: proofSchema,
    deliveryNote: deliveryNoteSchema,
    ...rareSchemas.drafts,
    runStandard: rareSchemas.papers.runStandard,
    supplyOrder: rareSchemas.papers.supplyOrder,
    ...rareSchemas.entries,
  };
  return Response.json(
    Object.fromEntries(
      Object.entries(schemas).map(([name, schema]) => [
        name,
        toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }),
      ]),
    ),
  );
}

const methods = 'GET, HEAD, OPTIONS';
export const OPTIONS = tellMethods(methods);

const refuse = refuseMethod(methods, 'Read the schemas with GET.');

export { refuse as DELETE, refuse as PATCH, refuse as POST, refuse as PUT };
