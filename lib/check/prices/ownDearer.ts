import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { type LinePlace, linePlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';

/**
 * RATE-03: an own price through which more pieces cost more each. What a size adds is the same in every break, so the
 * first size tells for all. One below its cost is told as that (RATE-08) and not once more.
 *
 * @returns one finding for each own price, about the dearest step
 */
export const ownDearer = (job: CheckedJob, facts: CostFacts): readonly Finding[] =>
  linePlaces(job).flatMap((place) => stepsOf(place, facts));

function stepsOf(place: LinePlace, { breakPrices, ownPrices }: CostFacts): readonly Finding[] {
  const { line } = place.line;
  const ofLine = breakPrices.filter(({ lineId }) => lineId === line.id);
  const steps = ofLine.filter(({ size }) => size === ofLine[0]?.size);
  const isLoss = (from: number) =>
    ownPrices.some((own) => own.lineId === line.id && own.from === from && own.profit < -1e-9);
  const isOwn = (from: number) => line.ownPrices.some((own) => own.from === from);
  const rises = steps
    .flatMap((more) => steps.map((fewer) => ({ fewer, more })))
    .filter(({ fewer, more }) => fewer.from < more.from && more.written > fewer.written + 1e-9)
    .flatMap((rise) => {
      // Of two own prices the later one is asked about.
      const own = [rise.more.from, rise.fewer.from].find(isOwn);
      return own === undefined || isLoss(own) ? [] : [{ ...rise, own }];
    })
    .toSorted((a, b) => b.more.written - b.fewer.written - (a.more.written - a.fewer.written));
  return line.ownPrices.flatMap(({ from }, index): readonly Finding[] => {
    const worst = rises.find(({ own }) => own === from);
    if (worst === undefined) return [];
    const { fewer, more } = worst;
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'ownDearer',
        where: place.where('ownPrices', index, 'each'),
        found: { value: more.written, unit: 'money/piece' },
        limit: { value: fewer.written, unit: 'money/piece' },
        facts: {
          line: line.name,
          fewer: fewer.from,
          fewerPrice: fewer.written,
          more: more.from,
          morePrice: more.written,
        },
        fix: {
          label: 'dropOwnPrices',
          facts: { count: 1 },
          changes: [
            place.change(
              ['ownPrices'],
              line.ownPrices.filter((_, at) => at !== index),
            ),
          ],
        },
      }),
    ];
  });
}
