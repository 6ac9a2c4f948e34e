import type { Scene } from '@/lib/check/rule';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { UsedRate } from '@/lib/job/usedRate';
import type { Rate } from '@/shared/schemas/rate';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/** Rates that are there, needed and comparable: amounts of a far currency have no band here. */
export function judged({ usedRates, resolved }: Scene): readonly (readonly [UsedRate, Rate])[] {
  const isMoneyKnown = typicalMoneyCurrencies.includes(resolved.workshop.currency);
  return usedRates.flatMap((used) => {
    if (used.rate === null || !used.needed) return [];
    // Zero scrap and pay of nothing have their own findings.
    if ((used.where.path.at(-1) === 'scrap' || isPay(used)) && used.rate.value === 0) return [];
    if (used.typical.unit.startsWith('money') && !isMoneyKnown) return [];
    return [[used, used.rate] as const];
  });
}

export const isPay = ({ where }: UsedRate): boolean => where.path[0] === 'rates' && where.path[1] === 'wage';

/** @returns whether a figure lies in the band that has been seen. */
export function isUsual({ typical }: UsedRate, rate: Rate): boolean {
  const value = rateInUnit(rate, typical.unit);
  const [least, most] = typical.plausible;
  return value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9);
}
