import { rateInUnit } from '@/lib/job/rateInUnit';
import type { StallCost, StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { rateCatalogue } from '@/shared/tables/rateCatalogue';

/** What a stall day costs, whatever is sold. Currency units and hours. */
export interface DayCosts {
  /** Spent whether or not one goes, and saved by staying at home; no own pay. */
  readonly sunk: number;
  readonly avoidable: number;
  readonly hours: number;
  readonly wage: number;
  readonly overheadPerHour: number;
}

/** @returns null where a cost, the rate of a drive or the maker's pay is not known. */
export function dayCosts(day: Pick<StallDay, 'costs' | 'hours'>, workshop: Workshop): DayCosts | null {
  const amounts = day.costs.map((cost) => ({ kind: cost.kind, money: moneyOf(cost, workshop) }));
  const { wage } = workshop.rates;
  if (wage === null || amounts.some(({ money }) => money === null)) return null;
  const of = (kind: StallCost['kind']) =>
    amounts.reduce((sum, cost) => sum + (cost.kind === kind ? (cost.money ?? 0) : 0), 0);
  const { overheadPerYear, overheadHours } = workshop.rates;
  return {
    sunk: of('sunk'),
    avoidable: of('avoidable'),
    hours: day.hours.reduce((sum, { hours }) => sum + hours, 0),
    wage: wage.value,
    overheadPerHour:
      (overheadPerYear?.value ?? rateCatalogue.overheadPerYear.typical) /
      (overheadHours?.value ?? rateCatalogue.overheadHours.typical),
  };
}

/** @returns what is paid to have the stall, currency units; null where a part of it is not known, and where there is none. */
export function stallFeeOf({ costs }: Pick<StallDay, 'costs'>, workshop: Workshop): number | null {
  const fees = costs.filter(({ isStallFee }) => isStallFee).map((cost) => moneyOf(cost, workshop));
  const known = fees.filter((fee) => fee !== null);
  return known.length === 0 || known.length < fees.length ? null : known.reduce((sum, fee) => sum + fee, 0);
}

/** @returns currency units; null where nobody typed it, or a drive has no length or no rate. */
export function moneyOf({ amount }: StallCost, { rates }: Workshop): number | null {
  if (amount.of === 'typed') return amount.money;
  if (amount.km === 0) return 0;
  if (amount.km === null || rates.travelRate === null) return null;
  return amount.km * rateInUnit(rates.travelRate, 'money/km');
}
