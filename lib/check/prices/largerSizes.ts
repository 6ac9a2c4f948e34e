import { isUsual, judged } from '@/lib/check/rates/judgedRates';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { linePlaces } from '@/lib/job/places';
import type { Finding, Where } from '@/shared/finding';
import { isLargerSize } from '@/shared/sizeOrder';

interface SizeAmount {
  readonly size: string;
  readonly amount: number;
}

/** RATE-03: the blank of a larger size that costs less than that of a smaller one, mostly one of two left typical. */
const largerBlanks: Rule = (scene) => {
  // A price that cannot be meant is asked about as that, and says nothing of the others.
  const odd = judged(scene).flatMap(([used, rate]) => (isUsual(used, rate) ? [] : [pathKey(used.where)]));
  return linePlaces(scene.resolved).flatMap(({ line, whereBlank }): readonly Finding[] => {
    const whereOf = (size: string) =>
      whereBlank(
        'sizes',
        Math.max(
          0,
          line.blank.sizes.findIndex(({ name }) => name === size),
        ),
        'price',
      );
    const isTyped = (size: string) =>
      line.blank.sizes.some(({ name, price }) => name === size && price !== null);
    const found = cheaperLarger(
      line.sizes.flatMap(({ size, blankPrice }) =>
        // What stands in for a price nobody typed says nothing of the others; QTY-04 asks for it.
        isTyped(size) && !odd.includes(pathKey(whereOf(size))) ? [{ size, amount: blankPrice.value }] : [],
      ),
    );
    if (found === null) return [];
    const { larger, smaller } = found;
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'largerCheaper',
        where: { ...whereOf(larger.size), size: larger.size },
        found: { value: larger.amount, unit: 'money/piece' },
        limit: { value: smaller.amount, unit: 'money/piece' },
        facts: {
          of: line.blank.name,
          size: larger.size,
          amount: larger.amount,
          smaller: smaller.size,
          smallerAmount: smaller.amount,
        },
      }),
    ];
  });
};

const pathKey = ({ document, id = '', path }: Pick<Where, 'document' | 'id' | 'path'>): string =>
  [document, id, ...path].join(' ');

/** RATE-03: a typed up-charge under which a larger size is sold for less than a smaller one. */
const largerCharges: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap(({ line, where }): readonly Finding[] => {
    const { upCharges, upCharging, name } = line.line;
    if (upCharges.length === 0 || upCharging === 'averaged') return [];
    const chargeOf = (size: string) =>
      upCharges.reduce((sum, charge) => (charge.size === size ? sum + charge.amount : sum), 0);
    const found = cheaperLarger(line.sizes.map(({ size }) => ({ size, amount: chargeOf(size) })));
    if (found === null) return [];
    const { larger, smaller } = found;
    const typed = [larger.size, smaller.size].map((size) =>
      upCharges.findIndex((charge) => charge.size === size),
    );
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'largerCharge',
        where: { ...where('upCharges', typed.find((at) => at >= 0) ?? 0, 'amount'), size: larger.size },
        found: { value: larger.amount, unit: 'money/piece' },
        limit: { value: smaller.amount, unit: 'money/piece' },
        facts: {
          of: name,
          size: larger.size,
          amount: larger.amount,
          smaller: smaller.size,
          smallerAmount: smaller.amount,
        },
      }),
    ];
  });

export const largerSizeRules: readonly Rule[] = [largerBlanks, largerCharges];

/** @returns the larger size that lies most below a smaller one; null where none does. */
function cheaperLarger(
  sizes: readonly SizeAmount[],
): { readonly larger: SizeAmount; readonly smaller: SizeAmount } | null {
  const pairs = sizes.flatMap((larger) =>
    sizes.flatMap((smaller) =>
      isLargerSize(larger.size, smaller.size) && larger.amount < smaller.amount - 1e-9
        ? [{ larger, smaller }]
        : [],
    ),
  );
  const gap = ({ larger, smaller }: (typeof pairs)[number]) => smaller.amount - larger.amount;
  const [first, ...others] = pairs;
  if (first === undefined) return null;
  return others.reduce((worst, next) => (gap(next) > gap(worst) + 1e-9 ? next : worst), first);
}
