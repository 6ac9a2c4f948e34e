import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { lineSchema } from '@/shared/schemas/job';
import { thresholds } from '@/shared/tables/thresholds';
import { broughtBlanks } from './broughtBlanks';
import { packRule } from './packs';

/** QTY-01: the sizes add up to what the customer ordered. */
const sum: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place) => {
    const { line } = place.line;
    const total = totalOf(place);
    const ordered = line.orderedQuantity;
    if (ordered === null || ordered === total) return [];
    return [
      makeFinding({
        id: 'QTY-01',
        severity: 'stop',
        where: place.where('orderedQuantity'),
        found: { value: total, unit: 'pieces' },
        limit: { value: ordered, unit: 'pieces' },
        facts: { line: line.name, total, ordered },
        fix: lineSchema.shape.orderedQuantity.safeParse(total).success
          ? {
              label: 'orderIsSum',
              facts: { total },
              changes: [place.change(['orderedQuantity'], total)],
            }
          : null,
      }),
    ];
  });

/** QTY-02: whole pieces, at least one, and no more than anybody would press at a kitchen table. */
const plausible: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place): readonly Finding[] => {
    const { line } = place.line;
    const total = totalOf(place);
    const broken = line.quantities.flatMap(({ size, quantity }, index) =>
      Number.isInteger(quantity) ? [] : [notWhole(place, size, quantity, index)],
    );
    if (broken.length > 0) return broken;
    const draft = {
      id: 'QTY-02',
      where: place.where('quantities'),
      found: { value: total, unit: 'pieces' },
    } as const;
    if (total < 1) {
      return [makeFinding({ ...draft, severity: 'stop', variant: 'none', facts: { line: line.name } })];
    }
    const most = thresholds.quantity.plausible.value;
    if (total <= most) return [];
    return [
      makeFinding({
        ...draft,
        severity: 'caution',
        variant: 'many',
        limit: { value: most, unit: 'pieces' },
        facts: { line: line.name, total, most },
      }),
    ];
  });

function notWhole(place: LinePlace, size: string, quantity: number, index: number): Finding {
  const whole = Math.ceil(quantity);
  return makeFinding({
    id: 'QTY-02',
    severity: 'stop',
    variant: 'fraction',
    where: { ...place.where('quantities', index, 'quantity'), size },
    found: { value: quantity, unit: 'pieces' },
    facts: { line: place.line.line.name, size, quantity },
    fix: {
      label: 'setQuantity',
      facts: { quantity: whole },
      changes: [place.change(['quantities', index, 'quantity'], whole)],
    },
  });
}

const totalOf = ({ line }: LinePlace): number =>
  line.line.quantities.reduce((total, { quantity }) => total + quantity, 0);

export const quantityRules: readonly Rule[] = [sum, plausible, packRule, broughtBlanks];
