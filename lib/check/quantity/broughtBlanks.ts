import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { blanksForConfidence } from '@/lib/job/blanksForConfidence';
import { linePlaces } from '@/lib/job/places';
import { thresholds } from '@/shared/tables/thresholds';
import { blanksPerPiece } from './packs';

/** QTY-08: how many blanks a customer who brings them is to bring, spares included. Whole pieces only: QTY-02 says so. */
export const broughtBlanks: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap(({ line, whereBlank }) => {
    const { blank, sizes } = line;
    if (blank.suppliedBy === 'maker' || sizes.length === 0) return [];
    if (sizes.some(({ quantity }) => !Number.isInteger(quantity))) return [];
    const chance = 1 / blanksPerPiece(line);
    const confidence = thresholds.spares.sure.value;
    const { blanks: asked } = blanksForConfidence(
      sizes.map(({ quantity, blankPrice }) => ({ pieces: quantity, chance, price: blankPrice.value })),
      confidence,
    );
    const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    const ask = asked.reduce((sum, count) => sum + count, 0);
    return [
      makeFinding({
        id: 'QTY-08',
        severity: 'note',
        variant: 'ask',
        where: whereBlank('suppliedBy'),
        found: { value: pieces, unit: 'pieces' },
        limit: { value: ask, unit: 'pieces' },
        facts: {
          blank: blank.name,
          pieces,
          ask,
          each: sizes.map(({ size }, index) => `${size} ${asked[index] ?? 0}`).join(', '),
          confidence,
        },
      }),
    ];
  });
