import type { Rule, Scene } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { changeAt, typicalRate } from '@/lib/job/missingRate';
import { placementPlaces } from '@/lib/job/places';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { UsedRate } from '@/lib/job/usedRate';
import type { Finding, Fix } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import { thresholds } from '@/shared/tables/thresholds';
import { placementTypicals } from '@/shared/tables/typicalRates';
import { isPay, isUsual, judged } from './judgedRates';
import { leftEmptyRules } from './leftEmpty';
import { ageRule } from './rateAge';
import { underDwellRule } from './underDwell';
import { wearRule } from './wearTwice';

/** RATE-03: a figure outside what has been seen. A divisor of nothing cannot be counted with at all. */
const plausible: Rule = (scene) =>
  judged(scene).flatMap(([used, rate]) => {
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
        fix: typicalFix(used, scene),
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
        fix: typicalFix(used, scene),
      }),
    ];
  });

/** RATE-04: the price of a pack typed as the price of one, or a litre's as a millilitre's. */
const packPrice: Rule = (scene) =>
  judged(scene).flatMap(([used, rate]): readonly Finding[] => {
    const { typical, packed, unit, plausible: band } = used.typical;
    const value = rateInUnit(rate, unit);
    if (typical === null || typical === 0) return [];
    const times = value / typical;
    // Ink runs from bottle to cartridge over more than this ratio, so only what is out of band is asked.
    const isAsked = packed === true || (unit === 'money/mL' && value > band[1]);
    if (!isAsked || times <= thresholds.packRatio.value + 1e-9) return [];
    const perPack = piecesInPack(used, scene);
    return [
      makeFinding({
        id: 'RATE-04',
        severity: 'caution',
        variant: unit === 'money/mL' ? 'litre' : 'pack',
        where: used.where,
        found: { value, unit },
        limit: { value: typical * thresholds.packRatio.value, unit },
        facts: { rate: used.typical.label, of: used.of, value, unit, typical, times },
        fix:
          perPack === null || times / perPack > thresholds.packRatio.value
            ? typicalFix(used, scene)
            : dividedFix(used, rate, perPack),
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

function typicalFix(used: UsedRate, { resolved }: Scene): Fix | null {
  const rate = typicalRate(used, resolved.asOf, resolved.workshop.currency);
  if (rate === null) return null;
  return {
    label: 'useTypical',
    facts: { typical: rate.value, unit: rate.unit },
    changes: changeAt(used.where, rate),
  };
}

/** How many of what is priced come in one pack, where the documents say so. */
function piecesInPack({ typical, where }: UsedRate, { resolved }: Scene): number | null {
  if (typical.unit === 'money/mL') return 1000;
  if (where.document !== 'blank') return null;
  const line = resolved.lines.find((entry) => entry.line.blankId === where.id);
  const index = where.path[1];
  const size = typeof index === 'number' ? line?.blank.sizes[index] : undefined;
  return size?.packSize && size.packSize > 1 ? size.packSize : null;
}

function dividedFix(used: UsedRate, rate: Rate, pieces: number): Fix {
  const value = Number((rate.value / pieces).toPrecision(12));
  return {
    label: 'divideByPack',
    facts: { pieces, value, unit: rate.unit },
    changes: changeAt(used.where, { ...rate, value }),
  };
}

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
