import type { Blank, Position } from '@/shared/schemas/blank';
import type { Placement } from '@/shared/schemas/job';
import type { Printer, Sheet, Workshop } from '@/shared/schemas/workshop';
import { placementTypicals } from '@/shared/tables/typicalRates';
import { pressFor, usualPressKind } from './pressFor';
import { startingPrint } from './startingPrint';
import { startingRecipe } from './startingRecipe';
import { typicalsOf } from './typicalsOf';

/** Stands where the workshop has nothing to choose; the check tells that it leads nowhere. */
export const NONE = 'none';

/** What a print is called until the maker names it. */
export const printNames: Readonly<Record<Position, string>> = {
  front: 'Front print',
  back: 'Back print',
  leftChest: 'Left chest print',
  rightChest: 'Right chest print',
  leftSleeve: 'Left sleeve print',
  rightSleeve: 'Right sleeve print',
  wrap: 'Print round it',
  face: 'Print on its face',
};

/** Scrap that runs of a blank measured at a press and place; null where they taught none. */
export type MeasuredScrap = (pressId: string, position: Position) => Placement['scrap'];

/** Where a placement is to begin. */
interface Beginning {
  readonly id: string;
  readonly artworkId: string;
  readonly blank: Blank | null;
  readonly workshop: Workshop;
  readonly sheet: Sheet | null;
  readonly printer: Printer | null;
  /** YYYY-MM-DD, the day its typical figures are set. */
  readonly day: string;
  /** Chosen already; else the workshop's own for the blank. */
  readonly pressId?: string | undefined;
  /** Places that other prints of the piece have. */
  readonly taken?: readonly Position[] | undefined;
  /** Scrap that runs of its blank measured, by press and place; else it is typical. */
  readonly measuredScrap?: MeasuredScrap | undefined;
}

/** A print to begin with, made for its blank: place, size, press, recipe and minutes, all of them typical. */
export function startingPlacement(beginning: Beginning): Placement {
  const { id, artworkId, blank, workshop, sheet, printer, day, taken = [] } = beginning;
  const { presses, policy, units } = workshop;
  const of = blank ?? { substrate: 'polyesterShirt', kind: 'garment' };
  const suited = presses.find((press) => press.id === beginning.pressId) ?? pressFor(of, presses);
  // A press that cannot take it bounds nothing: the check asks for one that can.
  const press = suited ?? presses[0] ?? null;
  const { position, widthMm, heightMm } = startingPrint(blank, {
    sheet,
    printer,
    press: suited,
    policy,
    unit: units.length,
    taken,
  });
  const typical = typicalsOf(day, workshop.currency);
  const times = placementTypicals[suited?.kind ?? usualPressKind(of)];
  return {
    id,
    name: printNames[position],
    position,
    artworkId,
    prints: [{ sizes: null, widthMm, heightMm }],
    fit: 'inside',
    dropFromCollarMm: null,
    mirror: true,
    pressId: press?.id ?? NONE,
    recipe: startingRecipe(of, units.temperature),
    raisedParts: 'none',
    scrap: (press && beginning.measuredScrap?.(press.id, position)) ?? typical(times.scrap.typical, 'share'),
    handMinutes: typical(times.handMinutes.typical, 'min'),
    aloneMinutes: typical(times.aloneMinutes.typical, 'min'),
    hotMinutes: typical(times.hotMinutes.typical, 'min'),
    testPresses: 0,
    bleedMm: null,
    safeZoneMm: null,
    rim: { belowMm: null, inside: false },
    replacements: 'alone',
  };
}
