import { type CostSheet, caseValue } from '@/lib/grid/costSheet';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import type { StandardPlacement } from '@/shared/schemas/making/runPapers';

/** @returns the prints of a line in press order, with what is set and what the standard expects of each */
export const standardPlacements = (
  { line, placements }: ResolvedLine,
  sheet: CostSheet,
  prints: readonly LaidOutPrint[],
): StandardPlacement[] =>
  placements.map(({ placement, artwork, press, scrap, handMinutes, aloneMinutes }, slot) => ({
    placementId: placement.id,
    name: placement.name,
    position: placement.position,
    artworkId: placement.artworkId,
    artworkVersion: artwork.version,
    pressId: press.id,
    pressName: press.name,
    recipe: placement.recipe,
    mirror: placement.mirror,
    dropFromCollarMm: placement.dropFromCollarMm,
    prints: prints
      .filter(({ lineId, placementId }) => lineId === line.id && placementId === placement.id)
      .map(({ sizes, widthMm, heightMm }) => ({ sizes: [...sizes], widthMm, heightMm })),
    testPresses: placement.testPresses,
    scrap: scrap.value,
    entering: sheet.cases.reduce(
      (sum, { lineId, quantity }, index) =>
        lineId === line.id ? sum + quantity * caseValue(sheet, `entering_${slot + 1}`, index) : sum,
      0,
    ),
    handMinutes: handMinutes.value * (sheet.jobValues.restFactor ?? 1),
    aloneMinutes: aloneMinutes.value,
  }));
