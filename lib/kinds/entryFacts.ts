import type { KindDescriptor } from '@/lib/stored/registry';
import {
  type Approval,
  approvalSchema,
  type InkPrints,
  type InkRefill,
  type Issuing,
  inkPrintsSchema,
  inkRefillSchema,
  issuingSchema,
  type TakeBack,
  takeBackSchema,
} from '@/shared/schemas/entries';
import {
  type Expense,
  expenseSchema,
  type OrderEvent,
  orderEventSchema,
  type Payment,
  type Payout,
  paymentSchema,
  payoutSchema,
} from '@/shared/schemas/orderEvents';
import {
  type ShopPayment,
  type ShopPrice,
  type ShopStatement,
  type StallTap,
  shopPaymentSchema,
  shopPriceSchema,
  shopStatementSchema,
  stallTapSchema,
} from '@/shared/schemas/stallEvents';
import {
  type StockCount,
  type StockMove,
  type StockTransfer,
  stockCountSchema,
  stockMoveSchema,
  stockTransferSchema,
} from '@/shared/schemas/stock';
import { makingEntries } from './makingEntries';
import { orderSeries } from './orderSeries';
import { stockItemLinks } from './stockItemLinks';

const first = { nature: 'entry', version: 1, steps: {} } as const;

const stockMove: KindDescriptor<StockMove, 'entry'> = {
  ...first,
  word: 'stock move',
  schema: stockMoveSchema,
  linksOf: ({ item, reference }) => [
    ...stockItemLinks(item),
    ...(reference === null ? [] : [{ to: reference.kind, id: reference.id, path: ['reference', 'id'] }]),
  ],
};
const stockTransfer: KindDescriptor<StockTransfer, 'entry'> = {
  ...first,
  word: 'stock transfer',
  schema: stockTransferSchema,
  linksOf: ({ from, to }) => [
    ...stockItemLinks(from.item, ['from', 'item']),
    ...stockItemLinks(to.item, ['to', 'item']),
  ],
};
const stockCount: KindDescriptor<StockCount, 'entry'> = {
  ...first,
  word: 'stock count',
  schema: stockCountSchema,
  linksOf: ({ item }) => stockItemLinks(item),
};
const inkRefill: KindDescriptor<InkRefill, 'entry'> = {
  ...first,
  word: 'ink refill',
  schema: inkRefillSchema,
  linksOf: () => [],
};
const inkPrints: KindDescriptor<InkPrints, 'entry'> = {
  ...first,
  word: 'print run',
  schema: inkPrintsSchema,
  linksOf: ({ jobId }) => (jobId === null ? [] : [{ to: 'job', id: jobId, path: ['jobId'] }]),
};
const approval: KindDescriptor<Approval, 'entry'> = {
  ...first,
  word: 'approval',
  schema: approvalSchema,
  linksOf: ({ artworkId }) => [{ to: 'artwork', id: artworkId, path: ['artworkId'] }],
};
const orderEvent: KindDescriptor<OrderEvent, 'entry'> = {
  ...first,
  word: 'step of an order',
  schema: orderEventSchema,
  linksOf: ({ orderId, step }) => [
    { to: 'order', id: orderId, path: ['orderId'] },
    ...('paperId' in step && step.paperId !== null
      ? [{ to: 'paper', id: step.paperId, path: ['step', 'paperId'] }]
      : []),
  ],
  numberIn: (body) => {
    const { step } = body;
    if (step.what !== 'enquired') return null;
    return {
      series: orderSeries(step.number.year),
      number: step.number,
      with: (number) => ({ ...body, step: { ...step, number: { ...step.number, ...number } } }),
    };
  },
};
const payment: KindDescriptor<Payment, 'entry'> = {
  ...first,
  word: 'payment',
  schema: paymentSchema,
  linksOf: ({ orderId }) => [{ to: 'order', id: orderId, path: ['orderId'] }],
};
const payout: KindDescriptor<Payout, 'entry'> = {
  ...first,
  word: 'payout',
  schema: payoutSchema,
  linksOf: ({ orderId, paymentId }) => [
    { to: 'order', id: orderId, path: ['orderId'] },
    { to: 'entry', id: paymentId, path: ['paymentId'] },
  ],
};
const expense: KindDescriptor<Expense, 'entry'> = {
  ...first,
  word: 'expense',
  schema: expenseSchema,
  linksOf: ({ orderId }) => (orderId === null ? [] : [{ to: 'order', id: orderId, path: ['orderId'] }]),
};
const stallTap: KindDescriptor<StallTap, 'entry'> = {
  ...first,
  word: 'tap of a sales count',
  schema: stallTapSchema,
  linksOf: ({ stallDayId, planId }) => [
    { to: 'stallDay', id: stallDayId, path: ['stallDayId'] },
    { to: 'paper', id: planId, path: ['planId'] },
  ],
};
const shopPrice: KindDescriptor<ShopPrice, 'entry'> = {
  ...first,
  word: 'price agreed with a shop',
  schema: shopPriceSchema,
  linksOf: ({ shopId, goods }) => [
    { to: 'shop', id: shopId, path: ['shopId'] },
    { to: 'job', id: goods.jobId, path: ['goods', 'jobId'] },
  ],
};
const shopStatement: KindDescriptor<ShopStatement, 'entry'> = {
  ...first,
  word: 'statement of a shop',
  schema: shopStatementSchema,
  linksOf: ({ shopId, rows }) => [
    { to: 'shop', id: shopId, path: ['shopId'] },
    ...rows.map(({ goods }, at) => ({ to: 'job', id: goods.jobId, path: ['rows', at, 'goods', 'jobId'] })),
  ],
};
const shopPayment: KindDescriptor<ShopPayment, 'entry'> = {
  ...first,
  word: 'payment of a shop',
  schema: shopPaymentSchema,
  linksOf: ({ shopId, statementId }) => [
    { to: 'shop', id: shopId, path: ['shopId'] },
    { to: 'entry', id: statementId, path: ['statementId'] },
  ],
};
const issuing: KindDescriptor<Issuing, 'entry'> = {
  ...first,
  word: 'issuing',
  schema: issuingSchema,
  linksOf: ({ paperId }) => [{ to: 'paper', id: paperId, path: ['paperId'] }],
};
const takeBack: KindDescriptor<TakeBack, 'entry'> = {
  ...first,
  word: 'taking back',
  schema: takeBackSchema,
  linksOf: ({ entryId }) => [{ to: 'entry', id: entryId, path: ['entryId'] }],
};

/** What is known of every kind of entry, under the name its records bear; of those of the making the schema is apart. */
export const entryFacts = {
  stockMove,
  stockTransfer,
  stockCount,
  inkRefill,
  inkPrints,
  approval,
  orderEvent,
  payment,
  payout,
  expense,
  stallTap,
  shopPrice,
  shopStatement,
  shopPayment,
  ...makingEntries,
  issuing,
  takeBack,
} as const;
