/** Places of an order’s screen that others lead to: a field of what was asked, or its jobs. */
export type OrderPlace = 'order-customer' | 'order-wanted' | 'order-jobs';
