import { cameMinor, type OrderPayment } from '@/lib/orders/money/payments';
import { closesInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { grouped } from '@/shared/grouped';
import type { Entry } from '@/shared/schemas/happened';
import type { ShopPayment } from '@/shared/schemas/stallEvents';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { type ToldOrder, taxOfPayments } from './orderTax';
import { leftOutBy, type YearRow } from './yearRow';

/** What says that money came. */
export interface TakingsNoted {
  readonly currency: string;
  /** Of all orders, in order; those of orders that are gone among them. */
  readonly payments: readonly OrderPayment[];
  readonly orderOf: (orderId: string) => ToldOrder | null;
  readonly closes: readonly DayPaper<'dayClose', DayClose>[];
  readonly shopPayments: readonly Entry<'shopPayment', ShopPayment>[];
  /** The channel something was sold by; null where none is known. */
  readonly channelOf: (about: {
    readonly kind: 'order' | 'stallDay' | 'shop';
    readonly id: string;
  }) => string | null;
}

/** @returns what came, and what of it was kept back, of all years. */
export const takingRows = (noted: TakingsNoted): readonly YearRow[] => [
  ...orderRows(noted),
  ...[...closesInForce(noted.closes).values()].flatMap((close) => closeRows(close, noted)),
  ...noted.shopPayments.map((entry) => shopRow(entry, noted)),
];

/** The last of its days: what several took is closed, and known, on that one. */
export const dayOfClose = ({ days, issuedOn }: Pick<DayClose, 'days' | 'issuedOn'>): string =>
  days.toSorted().at(-1) ?? issuedOn;

// Helpers

function orderRows({ payments, orderOf, channelOf, currency: own }: TakingsNoted): readonly YearRow[] {
  const byOrder = grouped(payments, ({ entry }) => entry.body.orderId);
  return [...byOrder].flatMap(([orderId, all]) => {
    const order = orderOf(orderId);
    const told = order?.standing.money.currency ?? own;
    const tax = taxOfPayments(
      order,
      all.filter(({ entry }) => entry.body.currency === told),
    );
    const about = { kind: 'order', id: orderId } as const;
    return all.flatMap(({ entry, feeMinor, payouts }): readonly YearRow[] => {
      const { day, kind, currency, way, note } = entry.body;
      const row = {
        ...{ id: entry.id, day, about, what: note, way, currency, receipt: null },
        leftOut: leftOutBy(currency, own),
      } as const;
      const came: YearRow = {
        ...row,
        ...{ flow: 'taking', kind, amountMinor: cameMinor(entry.body) },
        ...{ taxMinor: tax.get(entry.id) ?? null, sellingWay: channelOf(about) ?? 'orders' },
      };
      const fee: YearRow = {
        ...row,
        ...{
          id: payouts.at(-1)?.id ?? entry.id,
          flow: 'fee',
          kind: 'cardFee',
          amountMinor: -feeMinor,
          what: '',
        },
      };
      return feeMinor === 0 ? [came] : [came, fee];
    });
  });
}

/** As the close says it; nothing of it is worked out again. */
function closeRows(
  { id, body }: DayPaper<'dayClose', DayClose>,
  { currency: own, channelOf }: TakingsNoted,
): readonly YearRow[] {
  const { money, currency, stallDayId, title } = body;
  const about = { kind: 'stallDay', id: stallDayId } as const;
  const row = {
    ...{ id, day: dayOfClose(body), about, what: title, way: null, currency, receipt: null },
    leftOut: leftOutBy(currency, own),
  } as const;
  const rows: readonly YearRow[] = [
    {
      ...row,
      ...{ flow: 'taking', kind: 'stallTakings', amountMinor: money.gross, taxMinor: money.tax },
      sellingWay: channelOf(about) ?? 'stall',
    },
    { ...row, flow: 'fee', kind: 'cardFee', amountMinor: -money.fees },
    { ...row, flow: 'fee', kind: 'commission', amountMinor: -money.commission },
    { ...row, flow: 'tin', kind: 'tin', amountMinor: money.cashRounding + (money.difference ?? 0) },
    { ...row, flow: 'expense', kind: 'stall', amountMinor: -money.spent },
  ];
  return rows.filter(({ flow, amountMinor }) => flow === 'taking' || amountMinor !== 0);
}

function shopRow(
  { id, body }: Entry<'shopPayment', ShopPayment>,
  { currency: own, channelOf }: TakingsNoted,
): YearRow {
  const { day, shopId, amountMinor, currency } = body;
  const about = { kind: 'shop', id: shopId } as const;
  return {
    ...{ id, day, about, what: '', way: null, amountMinor, currency, receipt: null },
    ...{ flow: 'taking', kind: 'shopPayment', leftOut: leftOutBy(currency, own) },
    // No statement says what tax is inside.
    ...{ taxMinor: null, sellingWay: channelOf(about) ?? 'shops' },
  };
}
