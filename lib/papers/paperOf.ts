import type {
  Confirmation,
  CreditNote,
  DeliveryNote,
  Invoice,
  PaymentRequest,
  Proof,
  Receipt,
} from '@/shared/schemas/orderPapers';
import { type CareCards, careCardPaper } from './bodies/careCard';
import { type CarListBody, carListPaper } from './bodies/carListPaper';
import { type JobSheetBody, jobSheetPaper } from './bodies/jobSheetPaper';
import { creditNotePaper, invoicePaper, receiptPaper, requestPaper } from './bodies/moneyPapers';
import { type OwnSheetBody, ownSheetPaper } from './bodies/ownSheetPaper';
import { type PriceListBody, priceListPaper } from './bodies/priceListPaper';
import { deliveryPaper, proofPaper } from './bodies/proofPaper';
import { type CustomersQuote, confirmationPaper, quotePaper } from './bodies/quotePaper';
import { type SizeFormBody, sizeFormPaper } from './bodies/sizeFormPaper';
import { priceCardsPaper, type StallPricesBody, tableListPaper } from './bodies/stallPricesPaper';
import { type SuppliersOrder, supplyOrderPaper } from './bodies/supplyOrderPaper';
import type { Paper } from './paper';
import type { Labels } from './words/englishLabels';

/** What can be written as a paper. */
export type PaperSource =
  | { readonly kind: 'quote'; readonly body: CustomersQuote }
  | { readonly kind: 'confirmation'; readonly body: Confirmation }
  | { readonly kind: 'paymentRequest'; readonly body: PaymentRequest }
  | { readonly kind: 'invoice'; readonly body: Invoice }
  | { readonly kind: 'receipt'; readonly body: Receipt }
  | { readonly kind: 'creditNote'; readonly body: CreditNote }
  | { readonly kind: 'proof'; readonly body: Proof }
  | { readonly kind: 'deliveryNote'; readonly body: DeliveryNote }
  | { readonly kind: 'careCard'; readonly body: CareCards }
  | { readonly kind: 'jobSheet'; readonly body: JobSheetBody }
  | { readonly kind: 'ownSheet'; readonly body: OwnSheetBody }
  | { readonly kind: 'priceList'; readonly body: PriceListBody }
  | { readonly kind: 'tableList'; readonly body: StallPricesBody }
  | { readonly kind: 'priceCards'; readonly body: StallPricesBody }
  | { readonly kind: 'carList'; readonly body: CarListBody }
  | { readonly kind: 'sizeForm'; readonly body: SizeFormBody }
  | { readonly kind: 'supplyOrder'; readonly body: SuppliersOrder };

/** @param labels in the body's language, as `labelsFor` gives them */
export function paperOf(source: PaperSource, labels: Labels): Paper {
  switch (source.kind) {
    case 'quote':
      return quotePaper(source.body, labels);
    case 'confirmation':
      return confirmationPaper(source.body, labels);
    case 'paymentRequest':
      return requestPaper(source.body, labels);
    case 'invoice':
      return invoicePaper(source.body, labels);
    case 'receipt':
      return receiptPaper(source.body, labels);
    case 'creditNote':
      return creditNotePaper(source.body, labels);
    case 'proof':
      return proofPaper(source.body, labels);
    case 'deliveryNote':
      return deliveryPaper(source.body, labels);
    case 'careCard':
      return careCardPaper(source.body, labels);
    case 'jobSheet':
      return jobSheetPaper(source.body, labels);
    case 'ownSheet':
      return ownSheetPaper(source.body, labels);
    case 'priceList':
      return priceListPaper(source.body, labels);
    case 'tableList':
      return tableListPaper(source.body, labels);
    case 'priceCards':
      return priceCardsPaper(source.body, labels);
    case 'carList':
      return carListPaper(source.body, labels);
    case 'sizeForm':
      return sizeFormPaper(source.body, labels);
    case 'supplyOrder':
      return supplyOrderPaper(source.body, labels);
    default:
      return source satisfies never;
  }
}
