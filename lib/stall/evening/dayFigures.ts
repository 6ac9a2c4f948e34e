import type { DayCount } from '@/lib/stall/count/dayCount';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';
import { answersOfClose } from './answersOfClose';
import { dayMoney } from './dayMoney';
import { noAnswers } from './eveningAnswers';
import { stockRows } from './stockRows';

/** The money of a counted day in currency units, each rounded to the coin. */
export interface DayFigures {
  readonly gross: number;
  readonly net: number;
  readonly tax: number;
  /** Of cards. */
  readonly fees: number;
  /** With the float. */
  readonly expectedCash: number;
  /** Counted less expected; null where nobody counted. */
  readonly difference: number | null;
}

/**
 * The money of a day that was counted.
 *
 * @param close the one in force, which says what was in the tin; null where the day is open still
 */
export function dayFigures(plan: StallPlan, count: DayCount, close: DayClose | null): DayFigures {
  const answers = close === null ? noAnswers : answersOfClose(close);
  const money = dayMoney(plan, count, stockRows(plan, count, answers), answers);
  const units = (minor: number) => fromMinor(minor as MinorUnits, plan.currency);
  const { gross, net, tax, fees, expectedCash, difference } = money;
  return {
    ...{ gross: units(gross), net: units(net), tax: units(tax), fees: units(fees) },
    expectedCash: units(expectedCash),
    difference: difference === null ? null : units(difference),
  };
}
