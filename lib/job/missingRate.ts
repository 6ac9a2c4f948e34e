import { makeFinding } from '@/lib/findings/makeFinding';
import { type Change, type Finding, mendable, type Where } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';
import type { UsedRate } from './usedRate';

/**
 * The typical value in the place of a missing rate.
 *
 * @param asOf day it is dated with, YYYY-MM-DD
 * @param currency ISO 4217 code
 * @returns null where nothing is typical: an amount of money in a currency far from the dollar, or a rate
 *   that only the maker can know
 */
export function typicalRate(used: UsedRate, asOf: string, currency: string): Rate | null {
  const { typical, unit } = used.typical;
  const isMoney = unit.startsWith('money');
  if (typical === null || (isMoney && !typicalMoneyCurrencies.includes(currency))) return null;
  return { value: typical, unit, date: asOf, origin: 'typical' };
}

/**
 * RATE-01: a rate that the sums need is missing. The button writes the typical value.
 *
 * @returns nothing where the rate is there or not needed
 */
export function missingRate(used: UsedRate, asOf: string, currency: string): readonly Finding[] {
  if (used.rate !== null || !used.needed) return [];
  const rate = typicalRate(used, asOf, currency);
  const of = { rate: used.typical.label, of: used.of };
  return [
    makeFinding({
      id: 'RATE-01',
      severity: rate === null ? 'stop' : used.whenMissing,
      where: used.where,
      ...(rate === null
        ? ({ variant: 'noTypical', facts: of } as const)
        : ({
            variant: used.whenMissing,
            facts: { ...of, unit: used.typical.unit, typical: rate.value },
          } as const)),
      fix:
        rate === null
          ? null
          : {
              label: 'useTypical',
              facts: { typical: rate.value, unit: rate.unit },
              changes: changeAt(used.where, rate),
            },
    }),
  ];
}

/** @returns the change that writes a value where a finding points; none where no finding can be mended so. */
export function changeAt(where: Where, value: unknown): readonly Change[] {
  const document = mendable.find((kind) => kind === where.document);
  if (document === undefined) return [];
  return [
    {
      document,
      ...(where.id === undefined ? {} : { id: where.id }),
      path: where.path,
      value,
    },
  ];
}
