import type { LinePlace } from '@/lib/job/places';
import type { Change } from '@/shared/finding';

/**
 * What a line's recipes lack of light pressure and a short dwell.
 *
 * @param mostSeconds the longest dwell; null where the dwell is not the matter
 * @returns the changes that bring it; none where all recipes are so already
 */
export function gentlePress({ line, change }: LinePlace, mostSeconds: number | null): readonly Change[] {
  const changes = line.placements.flatMap(({ placement: { recipe } }, index) => {
    const at = (key: string, value: unknown) => change(['placements', index, 'recipe', key], value);
    return [
      ...(mostSeconds !== null && recipe.dwellSeconds > mostSeconds ? [at('dwellSeconds', mostSeconds)] : []),
      ...(recipe.pressure === 'light' ? [] : [at('pressure', 'light')]),
    ];
  });
  // A short dwell is right by the row of performance cloth, and too short by that of plain shirts.
  return mostSeconds !== null && changes.length > 0 && line.blank.substrate === 'polyesterShirt'
    ? [
        ...changes,
        { document: 'blank', id: line.line.blankId, path: ['substrate'], value: 'performancePolyester' },
      ]
    : changes;
}

/** @returns the change that plans a test press on a line; none where one is planned. */
export const testPress = ({ line, change }: LinePlace): readonly Change[] =>
  line.placements.some(({ placement }) => placement.testPresses > 0)
    ? []
    : [change(['placements', 0, 'testPresses'], 1)];
