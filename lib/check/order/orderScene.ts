/** What the rules of an order look at: facts that its documents, entries and dates tell. */
export interface OrderScene {
  readonly orderId: string;
  readonly asOf: string;
  /** Whether it still waits for what it begins with, is being made or over: delivered, lost or called off. */
  readonly stage: 'waiting' | 'making' | 'over';
  readonly wantedOn: string | null;
  /** The last day for approval and deposit (`latestDates`); null where no day is agreed or none can be reckoned. */
  readonly approveBy: string | null;
  /** The first day that could be kept if both came today; null where there is none. */
  readonly ready: string | null;
  readonly isApproved: boolean;
  /** True where none is asked. */
  readonly isDepositPaid: boolean;
  /** Rows of names in children's sizes. */
  readonly childRows: number;
  /** Addresses of the customer, and of those it is sent to. */
  readonly addresses: number;
}
