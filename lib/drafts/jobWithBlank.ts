import type { Blank, Position } from '@/shared/schemas/blank';
import type { Job, Line, Placement } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';
import { lineOfBlank } from './lineOfBlank';
import { pressFor, usualPressKind } from './pressFor';
import { type MeasuredScrap, printNames, startingPlacement } from './startingPlacement';
import { startingRecipe } from './startingRecipe';
import { FIRST_PIECES, typicalMix } from './typicalMix';

/** A line of a job that is to be made on another blank. */
interface BlankChange {
  readonly lineId: string;
  /** What it is made on now; undefined where that is not there any more. */
  readonly from: Blank | undefined;
  readonly to: { readonly id: string; readonly body: Blank };
  readonly workshop: Workshop;
  /** YYYY-MM-DD, the day typical figures are set. */
  readonly day: string;
  /** Scrap that runs of the blank measured; else it is typical. */
  readonly measuredScrap?: MeasuredScrap | undefined;
}

/**
 * A job with another blank on one of its lines, and with everything that follows from it. Another kind of thing
 * brings its press, recipe, places, print sizes and minutes, and asks for its price anew; another blank of the
 * same kind only the recipe nobody has changed. Pieces stay in number; what the maker named keeps its name, but for a
 * print named after a place it has left.
 *
 * @returns the same job where it has no such line
 */
export function jobWithBlank(job: Job, change: BlankChange): Job {
  if (!job.lines.some(({ id }) => id === change.lineId)) return job;
  return {
    ...job,
    lines: job.lines.map((line) => (line.id === change.lineId ? lineWithBlank(line, job, change) : line)),
  };
}

function lineWithBlank(line: Line, job: Job, change: BlankChange): Line {
  const { from, to } = change;
  const moved = {
    ...lineOfBlank(line, from?.name ?? null, { id: to.id, name: to.body.name }, otherNames(job, line)),
    quantities: quantitiesOn(line.quantities, to.body),
  };
  const sizes = to.body.sizes.map(({ name }) => name);
  if (from !== undefined && isAlike(from, to.body)) {
    return {
      ...moved,
      upCharges: line.upCharges.filter(({ size }) => sizes.includes(size)),
      placements: line.placements.map((placement) => sameKind(placement, from, change)),
    };
  }
  return {
    ...moved,
    // What is asked for a shirt says nothing of a mug.
    askedPrice: null,
    askedStart: null,
    upCharges: [],
    ownPrices: [],
    marketCeiling: null,
    placements: otherKind(line.placements, job, change),
  };
}

const otherNames = ({ lines }: Job, line: Line): readonly string[] =>
  lines.filter(({ id }) => id !== line.id).map(({ name }) => name);

/** Blanks that are pressed alike: the same kind of thing on the same kind of press. */
const isAlike = (one: Blank, other: Blank): boolean =>
  one.kind === other.kind &&
  usualPressKind(one) === usualPressKind(other) &&
  places(one).every((place) => places(other).includes(place));

function sameKind(placement: Placement, from: Blank, { to, workshop }: BlankChange): Placement {
  const scale = workshop.units.temperature;
  const before = startingRecipe(from, scale);
  const after = startingRecipe(to.body, scale);
  const { recipe } = placement;
  const isUntouched =
    from.substrate !== to.body.substrate &&
    recipe.temperature.value === before.temperature.value &&
    recipe.dwellSeconds === before.dwellSeconds &&
    recipe.pressure === before.pressure;
  return {
    ...placement,
    recipe: isUntouched
      ? {
          ...recipe,
          temperature: after.temperature,
          dwellSeconds: after.dwellSeconds,
          pressure: after.pressure,
          provenPresses: 0,
        }
      : recipe,
    prints: placement.prints.map((print) => ({
      ...print,
      sizes: keptSizes(print.sizes, to.body),
    })),
  };
}

/** A print for sizes of which the new blank has none is one for all of them. */
function keptSizes(sizes: readonly string[] | null, { sizes: all }: Blank): string[] | null {
  const kept = sizes?.filter((size) => all.some(({ name }) => name === size)) ?? [];
  return kept.length === 0 ? null : kept;
}

/** As many prints as the new kind has places, each with its picture, its names kept where somebody gave them. */
function otherKind(placements: readonly Placement[], job: Job, change: BlankChange): Placement[] {
  const { to, workshop, day, measuredScrap } = change;
  const sheet = workshop.sheets.find(({ id }) => id === job.sheetId) ?? null;
  const printer = workshop.printers.find(({ id }) => id === job.printerId) ?? null;
  const made: Placement[] = [];
  for (const { id, artworkId, name, recipe, pressId } of placements.slice(
    0,
    Math.max(1, places(to.body).length),
  )) {
    const placement = startingPlacement({
      id,
      artworkId,
      blank: to.body,
      workshop,
      sheet,
      printer,
      day,
      taken: made.map(({ position }) => position),
      measuredScrap,
      // Of several presses that suit, the one in use stays.
      pressId: pressFor(
        to.body,
        workshop.presses.filter((press) => press.id === pressId),
      )?.id,
    });
    const { protectivePaper } = recipe;
    made.push({
      ...placement,
      name: isOwn(name) ? name : placement.name,
      recipe: { ...placement.recipe, protectivePaper, barrierPaper: made.length > 0 },
    });
  }
  return made;
}

const places = ({ sizes }: Blank): readonly Position[] => [
  ...new Set(sizes.flatMap(({ maxPrints }) => maxPrints.map(({ position }) => position))),
];

/** A name that says where on a piece the print was would say what is not so of another kind of piece. */
const namesPlace = /\b(front|back|chest|breast|sleeve|shoulder|collar|neck|round|face|side)\b/i;

/** Whether a name is the maker's own and still true, and not one the beginning or another place gave. */
const isOwn = (name: string): boolean => !Object.values(printNames).includes(name) && !namesPlace.test(name);

/** The same number of pieces on other sizes: as they are where the sizes are there, else in the typical mix. */
function quantitiesOn(quantities: Line['quantities'], { sizes }: Blank): Line['quantities'] {
  const names = sizes.map(({ name }) => name);
  const made = quantities.filter(({ quantity }) => quantity > 0);
  if (made.length > 0 && made.every(({ size }) => names.includes(size))) {
    return quantities.filter(({ size }) => names.includes(size));
  }
  const pieces = made.reduce((sum, { quantity }) => sum + quantity, 0);
  return typicalMix(names, pieces > 0 ? Math.round(pieces) : FIRST_PIECES);
}
