import type { DatedOrder } from '@/lib/calendar/load';
import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';
import type { OrderNumber } from '@/shared/schemas/orderEvents';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';

/** A job of an order with everything it is costed from. */
export interface QuotedJob {
  readonly jobId: string;
  readonly input: JobInput;
}

/** A version of a price list that a line of an order takes its price from. */
export interface QuotedVersion {
  readonly paperId: string;
  readonly version: PriceListVersion;
  readonly isWithdrawn: boolean;
}

/** What a quote is made of: plain data, so that a worker can be asked. */
export interface QuoteAsked {
  readonly orderId: string;
  readonly order: Order;
  /** Null while nobody has given it one. */
  readonly orderNumber: OrderNumber | null;
  /** In the order of the order; those that are gone are left out. */
  readonly jobs: readonly QuotedJob[];
  readonly customer: Customer | null;
  readonly versions: readonly QuotedVersion[];
  /** The day it goes out, YYYY-MM-DD. */
  readonly day: string;
  /** Everything that was accepted; a file of one order knows of none. */
  readonly load: readonly DatedOrder[];
}
