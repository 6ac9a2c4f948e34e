import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { totalShare } from '@/lib/ink/generateBlack';
import { placementPlaces } from '@/lib/job/places';
import type { Fix } from '@/shared/finding';
import { otherTypicals, TYPICAL_TOTAL_COVERAGE, typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/**
 * RATE-01: nobody has said what the freight of an order's blanks costs. Empty is not said, 0 is said to be free; goods
 * for stock are bought with others, and a customer's own blanks come without.
 */
const freight: Rule = ({ resolved }) => {
  const { job, workshop, asOf } = resolved;
  const isBought = resolved.lines.some(({ blank }) => blank.suppliedBy === 'maker');
  if (job.freightIn !== null || job.madeFor !== 'order' || !isBought) return [];
  const isKnown = typicalMoneyCurrencies.includes(workshop.currency);
  const value = otherTypicals.freightIn.typical ?? 0;
  return [
    makeFinding({
      id: 'RATE-01',
      severity: 'caution',
      variant: 'noFreight',
      where: { document: 'job', path: ['freightIn'] },
      facts: {},
      fix: {
        ...(isKnown
          ? ({ label: 'useTypical', facts: { typical: value, unit: 'money/order' } } as const)
          : ({ label: 'noFreight', facts: {} } as const)),
        changes: [
          {
            document: 'job',
            path: ['freightIn'],
            value: isKnown
              ? { value, unit: 'money/order', date: asOf, origin: 'typical' }
              : { value: 0, unit: 'money/order', date: asOf, origin: 'yours' },
          },
        ],
      },
    }),
  ];
};

/** RATE-01: nobody has said how an order gets to its customer, so neither the way nor its minutes are counted. */
const drive: Rule = ({ resolved }) => {
  const { job, rates } = resolved;
  if (job.deliveryKm !== null || job.madeFor !== 'order') return [];
  const minutes = rates.deliverMinutes.value;
  return [
    makeFinding({
      id: 'RATE-01',
      severity: 'caution',
      variant: 'noDrive',
      where: { document: 'job', path: ['deliveryKm'] },
      facts: { minutes },
      fix: {
        label: 'countDelivery',
        facts: { minutes },
        changes: [{ document: 'job', path: ['deliveryKm'], value: 0 }],
      },
    }),
  ];
};

/** RATE-03: a picture that is set to use no ink at all. */
const noInk: Rule = ({ resolved }) => {
  const places = placementPlaces(resolved);
  const once = [...new Map(places.map((place) => [place.placed.placement.artworkId, place])).values()];
  return once.flatMap((place) => {
    const { artwork, totalCoverage } = place.placed;
    if (totalCoverage.value > 0) return [];
    const where = place.whereArtwork('coverage');
    const isRead = artwork.picture !== null && totalShare(artwork.picture.coverage) > 0;
    const change = (value: unknown): Fix['changes'] => [
      { document: 'artwork', id: place.placed.placement.artworkId, path: ['coverage'], value },
    ];
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'noInk',
        where,
        found: { value: 0, unit: 'share' },
        facts: { artwork: artwork.name },
        fix: isRead
          ? { label: 'inkOfPicture', facts: {}, changes: change(null) }
          : {
              label: 'useTypical',
              facts: { typical: TYPICAL_TOTAL_COVERAGE, unit: 'share' },
              changes: change({ kind: 'total', total: TYPICAL_TOTAL_COVERAGE }),
            },
      }),
    ];
  });
};

export const leftEmptyRules: readonly Rule[] = [freight, drive, noInk];
