import { makeFinding } from '@/lib/findings/makeFinding';
import type { Change, Finding, Fix, Where } from '@/shared/finding';
import type { Blank } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { changeAt, typicalRate } from './missingRate';
import { neighbourPrice } from './neighbourPrice';
import { ownEntry } from './ownEntry';
import { printOfSize } from './printOfSize';
import type { UsedRate } from './usedRate';

/**
 * QTY-04: a size is wanted that the blank does not come in, that has no price, or that a placement has no
 * print for.
 *
 * @returns a stop for each such size and place; sizes of one blank without a price are told together
 */
export const unmadeSizes = (input: JobInput): readonly Finding[] => [
  ...withoutPrice(input),
  ...input.job.lines.flatMap((line, lineIndex) => {
    const blank = ownEntry(input.blanks, line.blankId);
    if (blank === undefined) return [];
    return [
      ...strayCharges(line, lineIndex, blank),
      ...wantedSizes(line, lineIndex).flatMap(({ size, where }) =>
        blank.sizes.some(({ name }) => name === size)
          ? noPrint(line, lineIndex, size)
          : [unknownSize(where, size, blank)],
      ),
    ];
  }),
];

const wantedSizes = ({ id, quantities }: Line, lineIndex: number) =>
  quantities.flatMap(({ size, quantity }, index) => {
    const path = ['lines', lineIndex, 'quantities', index];
    const where: Where = { document: 'job', path, lineId: id, size };
    return quantity > 0 ? [{ size, where }] : [];
  });

/** An up-charge for a size that the blank does not come in does nothing, which nobody meant. */
function strayCharges(line: Line, lineIndex: number, blank: Blank): readonly Finding[] {
  return line.upCharges.flatMap(({ size }, index): readonly Finding[] => {
    if (blank.sizes.some(({ name }) => name === size)) return [];
    const path = ['lines', lineIndex, 'upCharges'];
    return [
      makeFinding({
        id: 'QTY-04',
        severity: 'caution',
        variant: 'strayCharge',
        where: { document: 'job', path: [...path, index], lineId: line.id, size },
        found: size,
        facts: { size, blank: blank.name, line: line.name },
        fix: {
          label: 'dropCharge',
          facts: { size },
          changes: [
            { document: 'job', path, value: line.upCharges.filter((charge) => charge.size !== size) },
          ],
        },
      }),
    ];
  });
}

function unknownSize(where: Where, size: string, blank: Blank): Finding {
  return makeFinding({
    id: 'QTY-04',
    severity: 'stop',
    where,
    variant: 'noBlank',
    found: size,
    facts: { size, blank: blank.name, sizes: blank.sizes.map(({ name }) => name).join(', ') },
  });
}

/** The wanted sizes that nobody has priced, once a blank, whichever lines want them. */
function withoutPrice(input: JobInput): readonly Finding[] {
  const { lines } = input.job;
  return [...new Set(lines.map(({ blankId }) => blankId))].flatMap((blankId) => {
    const blank = ownEntry(input.blanks, blankId);
    if (blank?.suppliedBy !== 'maker') return [];
    const open = blank.sizes.filter(({ price }) => price === null).map(({ name }) => name);
    const wanted = lines.flatMap((line, index) =>
      line.blankId === blankId ? wantedSizes(line, index).filter(({ size }) => open.includes(size)) : [],
    );
    const [first] = wanted;
    if (first === undefined) return [];
    const sizes = [...new Set(wanted.map(({ size }) => size))];
    const { size, ...line } = first.where;
    return [
      makeFinding({
        id: 'QTY-04',
        severity: 'stop',
        where: sizes.length === 1 ? first.where : line,
        variant: 'noPrice',
        facts: { sizes: sizes.join(', '), count: sizes.length, blank: blank.name },
        fix: priceFix(input, blankId, blank, sizes),
      }),
    ];
  });
}

/**
 * Larger sizes cost more, so the price of the next smaller one comes nearer than the typical. Of two sizes with one name
 * each that has no price gets one.
 */
function priceFix(input: JobInput, blankId: string, blank: Blank, sizes: readonly string[]): Fix | null {
  const priced = blank.sizes.flatMap(({ name, price }, index) =>
    price === null && sizes.includes(name)
      ? [{ path: ['sizes', index, 'price'], near: neighbourPrice(blank, index) }]
      : [],
  );
  const changes = priced.flatMap(({ path, near }): readonly Change[] => {
    if (near === null) return [];
    const { value, unit } = near.price;
    return [
      {
        document: 'blank',
        id: blankId,
        path,
        value: { value, unit, date: input.asOf, origin: 'typical' },
      },
    ];
  });
  const [near, ...others] = priced.flatMap((one) => one.near ?? []);
  if (near === undefined) return typicalPrices(input, blankId, blank, priced);
  return others.every(({ size }) => size === near.size)
    ? { label: 'priceAsSize', facts: { size: near.size, price: near.price.value }, changes }
    : { label: 'pricesAsNear', facts: { count: priced.length }, changes };
}

/** Where no size has a price, all of them begin with the typical one. */
function typicalPrices(
  { asOf, workshop }: JobInput,
  blankId: string,
  blank: Blank,
  priced: readonly { readonly path: Where['path'] }[],
): Fix | null {
  const typical = blankTypicals[blank.kind].price;
  const where: Where = { document: 'blank', id: blankId, path: [] };
  const used: UsedRate = { rate: null, typical, where, of: '', needed: true, whenMissing: 'stop' };
  const rate = typicalRate(used, asOf, workshop.currency);
  if (rate === null) return null;
  return {
    label: 'useTypical',
    facts: { typical: rate.value, unit: rate.unit },
    changes: priced.flatMap(({ path }) => changeAt({ ...where, path }, rate)),
  };
}

function noPrint(line: Line, lineIndex: number, size: string): readonly Finding[] {
  return line.placements.flatMap((placement, index) => {
    if (printOfSize(placement, size) !== null) return [];
    const path = ['lines', lineIndex, 'placements', index, 'prints'];
    const last = placement.prints.at(-1);
    const fix: Fix | null = last
      ? {
          label: 'printForAll',
          facts: { widthMm: last.widthMm, heightMm: last.heightMm },
          changes: [
            {
              document: 'job',
              path: [...path, placement.prints.length - 1, 'sizes'],
              value: null,
            },
          ],
        }
      : null;
    return [
      makeFinding({
        id: 'QTY-04',
        severity: 'stop',
        where: { document: 'job', path, lineId: line.id, placementId: placement.id, size },
        variant: 'noPrint',
        facts: { size, placement: placement.name },
        fix,
      }),
    ];
  });
}
