import { renamedRule } from '@/lib/kinds/renamedRule';
import { isPlainObject } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';
import { untoldSteps } from '@/shared/schemas/recipeSteps';

/** Version 1 to 2: whether prints share sheets; until then each was laid out by itself. */
export const jobWithGang = (body: unknown): unknown =>
  isPlainObject(body) ? { ...body, gang: 'apart' } : body;

/** Version 2 to 3: own prices for breaks and the way of reckoning them; edges of prints were not measured. */
export const jobWithOwnPrices = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        lines: eachEntry(body.lines, (line) => ({
          ...line,
          upCharging: 'separate',
          ownPrices: [],
          selling: 'asListed',
          nameList: '',
          placements: eachEntry(line.placements, (placement) => ({
            ...placement,
            bleedMm: null,
            safeZoneMm: null,
          })),
        })),
      }
    : body;

/**
 * Version 3 to 4: how a list is reckoned follows the workshop unless the line says otherwise, and its rules have the
 * names they bear everywhere. A list as it stands was what every line began with: nobody chose it. No job had a state, no
 * recipe its steps, and no order paid anything once beside its pieces.
 */
export const jobWithListRule = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        state: 'draft',
        archivedOn: null,
        lines: eachEntry(body.lines, (line) => ({
          ...line,
          selling: line.selling === 'asListed' ? null : renamedRule(line.selling),
          breaks: null,
          audience: null,
          askedStart: null,
          placements: eachEntry(line.placements, (placement) => ({
            ...placement,
            rim: { belowMm: null, inside: false },
            recipe: isPlainObject(placement.recipe)
              ? { ...placement.recipe, steps: untoldSteps }
              : placement.recipe,
          })),
        })),
      }
    : body;
