import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { placementPlaces } from '@/lib/job/places';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { UsedRate } from '@/lib/job/usedRate';
import type { Finding } from '@/shared/finding';
import { placementTypicals } from '@/shared/tables/typicalRates';
import { alikeRates } from './alikeRates';
import { isPay, isUsual, judged } from './judgedRates';
import { leftEmptyRules } from './leftEmpty';
import { isPackPrice, packPrice, piecesInPack } from './packPrice';
import { ageRule } from './rateAge';
import { typicalFix } from './typicalFix';
import { underDwellRule } from './underDwell';
import { wearRule } from './wearTwice';

/**
 * RATE-03: a figure outside what has been seen. A divisor of nothing cannot be counted with at all; what looks like the
 * price of a pack is asked about as that.
 */
const plausible: Rule = (scene) =>
  alikeRates(
    judged(scene).filter(([used, rate]) => !isPackPrice(used, rate)),
    (used) => piecesInPack(used, scene),
  ).flatMap((alike): readonly Finding[] => {
    const { used, rate } = alike;
    const value = rateInUnit(rate, used.typical.unit);
    const [least, most] = used.typical.plausible;
    const { unit } = used.typical;
    const isNothing = value <= 0 && isDivisor(used);
    if (!isNothing && isUsual(used, rate)) return [];
    const measured = { rate: used.typical.label, of: used.of, value, unit };
    return [
      makeFinding({
        id: 'RATE-03',
        severity: isNothing ? 'stop' : 'caution',
        ...(isNothing
          ? ({ variant: 'nothing', facts: measured } as const)
          : ({ variant: value < least ? 'low' : 'high', facts: { ...measured, least, most } } as const)),
        waivable: false,
        where: used.where,
        found: { value, unit },
        limit: { value: value < least ? least : most, unit },
        fix: typicalFix(alike, scene),
      }),
    ];
  });

/** RATE-03: pay of nothing is a figure, and it makes every price one at which the maker works for nothing. */
const noPay: Rule = (scene) =>
  scene.usedRates.flatMap((used) => {
    if (!isPay(used) || used.rate === null || used.rate.value > 0) return [];
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'noPay',
        where: used.where,
        found: { value: used.rate.value, unit: used.rate.unit },
        facts: {},
        fix: typicalFix({ used, wheres: [used.where] }, scene),
      }),
    ];
  });

/** RATE-05: nobody spoils nothing. */
const noScrap: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { scrap, placement, press } = place.placed;
    if (scrap.value > 0) return [];
    const typical = placementTypicals[press.kind].scrap.typical ?? 0;
    return [
      makeFinding({
        id: 'RATE-05',
        severity: 'caution',
        where: place.where('scrap'),
        found: { value: 0, unit: 'share' },
        facts: { placement: placement.name, typical },
        fix: {
          label: 'useTypical',
          facts: { typical, unit: 'share' },
          changes: [
            place.change(['scrap'], {
              value: typical,
              unit: 'share',
              date: resolved.asOf,
              origin: 'typical',
            }),
          ],
        },
      }),
    ];
  });

/** Hours that the yearly overhead is divided by. */
const isDivisor = ({ typical }: UsedRate): boolean => typical.unit === 'h/year';

export const rateRules: readonly Rule[] = [
  ...leftEmptyRules,
  ageRule,
  noPay,
  plausible,
  underDwellRule,
  packPrice,
  noScrap,
  wearRule,
];
