import { makeFinding } from '@/lib/findings/makeFinding';
import type { Finding, Fix, Where } from '@/shared/finding';
import type { Blank } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { missingRate } from './missingRate';
import { neighbourPrice } from './neighbourPrice';
import { ownEntry } from './ownEntry';
import { printOfSize } from './printOfSize';

/**
 * QTY-04: a size is wanted that the blank does not come in, that has no price, or that a placement has no
 * print for.
 *
 * @returns a stop for each such size and place
 */
export function unmadeSizes(input: JobInput): readonly Finding[] {
  return input.job.lines.flatMap((line, lineIndex) => {
    const blank = ownEntry(input.blanks, line.blankId);
    if (blank === undefined) return [];
    return [
      ...strayCharges(line, lineIndex, blank),
      ...line.quantities.flatMap(({ size, quantity }, index) => {
        if (!(quantity > 0)) return [];
        const where: Where = {
          document: 'job',
          path: ['lines', lineIndex, 'quantities', index],
          lineId: line.id,
          size,
        };
        const known = blank.sizes.find(({ name }) => name === size);
        if (known === undefined) return [unknownSize(where, size, blank)];
        return [
          ...(known.price === null && blank.suppliedBy === 'maker'
            ? [noPrice(input, where, size, line, blank)]
            : []),
          ...noPrint(line, lineIndex, size),
        ];
      }),
    ];
  });
}

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

/** Larger sizes cost more, so the price of the next smaller one comes nearer than the typical. */
function noPrice(input: JobInput, where: Where, size: string, line: Line, blank: Blank): Finding {
  const index = blank.sizes.findIndex(({ name }) => name === size);
  return makeFinding({
    id: 'QTY-04',
    severity: 'stop',
    where,
    variant: 'noPrice',
    facts: { size, blank: blank.name },
    fix: priceOfNeighbour(input, line, blank, index) ?? typicalPrice(input, line, blank, index),
  });
}

function priceOfNeighbour({ asOf }: JobInput, line: Line, blank: Blank, index: number): Fix | null {
  const near = neighbourPrice(blank, index);
  if (near === null) return null;
  const { value, unit } = near.price;
  return {
    label: 'priceAsSize',
    facts: { size: near.size, price: value },
    changes: [
      {
        document: 'blank',
        id: line.blankId,
        path: ['sizes', index, 'price'],
        value: { value, unit, date: asOf, origin: 'typical' },
      },
    ],
  };
}

function typicalPrice(input: JobInput, line: Line, blank: Blank, index: number): Fix | null {
  const [missing] = missingRate(
    {
      rate: null,
      typical: blankTypicals[blank.kind].price,
      where: { document: 'blank', id: line.blankId, path: ['sizes', index, 'price'] },
      of: '',
      needed: true,
      whenMissing: 'stop',
    },
    input.asOf,
    input.workshop.currency,
  );
  return missing?.fix ?? null;
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
