import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { onHandOf } from '@/lib/job/onHandOf';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces } from '@/lib/job/places';

interface Need {
  readonly place: LinePlace;
  readonly size: string;
  /** Blanks expected to be drawn, over all lines that use this blank and size. */
  readonly blanks: number;
}

/** QTY-08: blanks come in packs, and the last pack is not used up. */
export const packRule: Rule = ({ resolved }) =>
  needs(linePlaces(resolved).filter(({ line }) => line.blank.suppliedBy === 'maker')).flatMap(
    ({ place, size, blanks }) => {
      const { blank } = place.line;
      const index = blank.sizes.findIndex(({ name }) => name === size);
      const known = blank.sizes[index];
      const pack = known?.packSize ?? 1;
      const counted = onHandOf(resolved, place.line.line.blankId, size);
      // What nobody counted is bought whole, and less than none takes nothing away from what is needed.
      const toBuy = Math.ceil(blanks - 1e-9) - Math.max(0, counted ?? 0);
      const left = toBuy > 0 ? (pack - (toBuy % pack)) % pack : 0;
      if (left === 0) return [];
      const price = place.line.sizes.find((wanted) => wanted.size === size)?.blankPrice.value ?? 0;
      return [
        makeFinding({
          id: 'QTY-08',
          severity: 'note',
          where: { ...place.whereBlank('sizes', index, 'packSize'), size },
          found: { value: toBuy, unit: 'pieces' },
          limit: { value: pack, unit: 'pieces' },
          facts: {
            blank: blank.name,
            size,
            pack,
            needed: toBuy,
            buy: toBuy + left,
            left,
            worth: left * price,
            counted,
          },
        }),
      ];
    },
  );

function needs(places: readonly LinePlace[]): readonly Need[] {
  const byBlankAndSize = new Map<string, Need>();
  for (const place of places) {
    for (const { size, quantity } of place.line.sizes) {
      const key = JSON.stringify([place.line.line.blankId, size]);
      const before = byBlankAndSize.get(key);
      const blanks = (before?.blanks ?? 0) + quantity * blanksPerPiece(place.line);
      byBlankAndSize.set(key, { place: before?.place ?? place, size, blanks });
    }
  }
  return [...byBlankAndSize.values()];
}

/** Every press spoils its share, and some blanks are faulty when they come. */
export const blanksPerPiece = ({ placements, blankFault }: ResolvedLine): number =>
  placements.reduce((pieces, { scrap }) => pieces / (1 - scrap.value), 1 / (1 - blankFault.value));
