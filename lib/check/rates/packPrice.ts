import type { Rule, Scene } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { changeAt } from '@/lib/job/missingRate';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { UsedRate } from '@/lib/job/usedRate';
import type { Finding, Fix } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import { thresholds } from '@/shared/tables/thresholds';
import { type AlikeRates, alikeRates } from './alikeRates';
import { isUsual, judged } from './judgedRates';
import { typicalFix } from './typicalFix';

/** RATE-04: the price of a pack typed as the price of one, or a litre's as a millilitre's. */
export const packPrice: Rule = (scene) =>
  alikeRates(
    judged(scene).filter(([used, rate]) => isPackPrice(used, rate)),
    (used) => piecesInPack(used, scene),
  ).flatMap((alike): readonly Finding[] => {
    const { used, rate } = alike;
    const { typical, unit, label } = used.typical;
    if (typical === null) return [];
    const value = rateInUnit(rate, unit);
    return [
      makeFinding({
        id: 'RATE-04',
        severity: 'caution',
        variant: unit === 'money/mL' ? 'litre' : 'pack',
        where: used.where,
        found: { value, unit },
        limit: { value: typical * thresholds.packRatio.value, unit },
        facts: { rate: label, of: used.of, value, unit, typical, times: value / typical },
        fix: dividedFix(alike, scene) ?? typicalFix(alike, scene),
      }),
    ];
  });

/** @returns whether a figure is asked about as the price of a pack, and so not as one that is too high. */
export function isPackPrice({ typical: known }: UsedRate, rate: Rate): boolean {
  const { typical, packed, unit, plausible } = known;
  if (typical === null || typical === 0) return false;
  const value = rateInUnit(rate, unit);
  // Ink runs from bottle to cartridge over more than this ratio, so only what is out of band is asked.
  const isAsked = packed === true || (unit === 'money/mL' && value > plausible[1]);
  return isAsked && value / typical > thresholds.packRatio.value + 1e-9;
}

/** How many of what is priced come in one pack, where the documents say so. */
export function piecesInPack({ typical, where }: UsedRate, { resolved }: Scene): number | null {
  if (typical.unit === 'money/mL') return 1000;
  if (where.document !== 'blank') return null;
  const line = resolved.lines.find((entry) => entry.line.blankId === where.id);
  const index = where.path[1];
  const size = typeof index === 'number' ? line?.blank.sizes[index] : undefined;
  return size?.packSize && size.packSize > 1 ? size.packSize : null;
}

/** @returns null where what one would cost then is asked about again. */
function dividedFix({ used, rate, wheres }: AlikeRates, scene: Scene): Fix | null {
  const pieces = piecesInPack(used, scene);
  if (pieces === null) return null;
  const value = Number((rate.value / pieces).toPrecision(12));
  const one = { ...rate, value };
  if (!isUsual(used, one) || isPackPrice(used, one)) return null;
  return {
    label: 'divideByPack',
    facts: { pieces, value, unit: rate.unit },
    changes: wheres.flatMap((where) => changeAt(where, one)),
  };
}
