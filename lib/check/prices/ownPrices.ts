import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { linePlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';

/**
 * An own price of a break at which a piece is given away (RATE-03), or costs more than it brings (RATE-08). The
 * second is a caution and no stop: it is a list for later, and not the price of the job.
 *
 * @returns one finding a break, about the size that loses most
 */
export function ownPrices(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  return linePlaces(job).flatMap((place) =>
    place.line.line.ownPrices.flatMap(({ from }, index): readonly Finding[] => {
      const cells = facts.ownPrices.filter(
        (one) =>
          one.lineId === place.line.line.id && one.from === from && (one.profit < -1e-9 || one.written <= 0),
      );
      const [worst] = [...cells].sort(byLoss);
      if (worst === undefined) return [];
      const isNothing = worst.written <= 0;
      return [
        makeFinding({
          id: isNothing ? 'RATE-03' : 'RATE-08',
          severity: isNothing ? 'stop' : 'caution',
          variant: isNothing ? 'ownNothing' : 'ownBelowCost',
          ...(isNothing && { waivable: false }),
          where: { ...place.where('ownPrices', index, 'each'), size: worst.size },
          found: { value: worst.written, unit: 'money/piece' },
          facts: {
            line: place.line.line.name,
            size: worst.size,
            from,
            at: worst.at,
            price: worst.written,
            short: -worst.profit,
          },
        }),
      ];
    }),
  );
}

// What is given away comes first; then what loses most.
const byLoss = (a: CostFacts['ownPrices'][number], b: CostFacts['ownPrices'][number]): number =>
  Number(b.written <= 0) - Number(a.written <= 0) || a.profit - b.profit;
