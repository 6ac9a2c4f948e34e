/** Places of an order’s screen that others lead to: a field of what was asked, its jobs, its names. */
export type OrderPlace = 'order-customer' | 'order-wanted' | 'order-jobs' | 'order-names';
