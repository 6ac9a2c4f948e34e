import { costOfSome } from '@/lib/stock/costOfSome';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { DatedStock } from './stockByDay';
import { type DaySpan, isWithin } from './yearSpan';

/** @returns what stock that was bought in a span without a delivery is noted to have cost, whole minor units of a currency */
export function boughtAlone(noted: readonly DatedStock[], span: DaySpan, currency: string): number {
  const minor = noted.reduce((sum, { day, entry, isDelivered }) => {
    if (entry.kind !== 'stockMove' || isDelivered || !isWithin(span, day)) return sum;
    const { cause, quantity, unitCost } = entry.body;
    if (cause !== 'bought' || unitCost?.currency !== currency) return sum;
    return sum + costOfSome(unitCost, quantity);
  }, 0);
  return toMinor(fromMinor(minor as MinorUnits, currency), currency);
}
