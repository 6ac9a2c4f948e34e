import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { changeAt } from '@/lib/job/missingRate';
import type { UsedRate } from '@/lib/job/usedRate';
import { daysBetween } from '@/shared/days';
import type { Severity } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import { thresholds } from '@/shared/tables/thresholds';

type Age = 'old' | 'stale' | 'future';

const severities: Record<Age, Severity> = { future: 'caution', stale: 'caution', old: 'note' };

/**
 * RATE-02: figures set long ago, or dated in the future. Rates age together, so there is one finding for each
 * document and age; typical values do not age, they are marked already.
 */
export const ageRule: Rule = ({ usedRates, resolved }) => {
  const groups = new Map<string, { readonly age: Age; readonly rates: (readonly [UsedRate, Rate])[] }>();
  for (const used of usedRates) {
    if (used.rate === null || !used.needed || used.rate.origin === 'typical') continue;
    const age = ageOf(daysBetween(used.rate.date, resolved.asOf));
    if (age === null) continue;
    const key = JSON.stringify([used.where.document, used.where.id, age]);
    const group = groups.get(key) ?? { age, rates: [] };
    group.rates.push([used, used.rate]);
    groups.set(key, group);
  }
  return [...groups.values()].flatMap(({ age, rates }) => {
    const [first] = rates.toSorted(([, a], [, b]) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
    if (first === undefined) return [];
    const [used, rate] = first;
    const limit = age === 'stale' ? thresholds.rateAge.caution : thresholds.rateAge.note;
    const days = daysBetween(rate.date, resolved.asOf);
    return [
      makeFinding({
        id: 'RATE-02',
        severity: severities[age],
        variant: age,
        where: used.where,
        found: { value: days, unit: 'days' },
        limit: age === 'future' ? null : { value: limit.value, unit: 'days' },
        facts: {
          rate: used.typical.label,
          of: used.of,
          date: rate.date,
          days: Math.abs(days),
          others: rates.length - 1,
        },
        fix: {
          label: 'confirmToday',
          facts: { count: rates.length },
          changes: rates.flatMap(([each]) =>
            each.rate === null ? [] : changeAt(each.where, { ...each.rate, date: resolved.asOf }),
          ),
        },
      }),
    ];
  });
};

function ageOf(days: number): Age | null {
  if (days < 0) return 'future';
  if (days > thresholds.rateAge.caution.value) return 'stale';
  return days > thresholds.rateAge.note.value ? 'old' : null;
}
