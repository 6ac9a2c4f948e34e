import type { OrderPaperKind } from './paperFacts';

/** What the orders of a year are numbered in. */
export const orderSeries = (year: number): string => `order ${shortYear(year)}`;

/**
 * What a paper of an order is numbered in: a quote and its confirmation count the versions of one order, all else the
 * papers of a kind and year.
 *
 * @param year of the day it is issued on
 */
export const orderPaperSeries = (kind: OrderPaperKind, orderId: string, year: number): string =>
  kind === 'quote' || kind === 'confirmation' ? `${kind} ${orderId}` : `${kind} ${shortYear(year)}`;

/** As numbers show it: 26 of 2026. */
const shortYear = (year: number): string => String(year % 100).padStart(2, '0');
