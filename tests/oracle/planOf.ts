import type { Decimal } from 'decimal.js';
import type { Artwork, Coverage } from '@/shared/schemas/artwork';
import type { Placement } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { exact, known, ONE, sum, ZERO } from './exact';
import { kwh, pressWear, type Shop } from './shopOf';
import { stripOf, wholeSheet } from './stripOf';

/** How many prints of one print size go on a sheet; index as in the placement's list. */
export type PrintsPerSheet = (lineId: string, placementId: string, print: number) => number;

/** One line looked at in a batch of another size, its mix of sizes kept. */
export interface OtherBatch {
  readonly lineId: string;
  readonly batch: number;
}

export interface GroupPlan {
  readonly sizes: ReadonlySet<string>;
  readonly pieces: Decimal;
  /** Whole sheets for them, nothing spoiled; strips of a roll as the letter sheets that have their area. */
  readonly wholeSheets: Decimal;
  readonly perSheet: Decimal;
  /** What one sheet counts for: 1, or the letter sheets of a strip. */
  readonly letters: Decimal;
  /** Millilitres of one print. */
  readonly inkPerPrint: Decimal;
  readonly areaM2: Decimal;
}

export interface PlacementPlan {
  /** Pieces that enter this press for each good one. */
  readonly entering: Decimal;
  readonly scrap: Decimal;
  readonly tests: Decimal;
  readonly groups: readonly GroupPlan[];
  /** Sheets that the print for one spoiled piece takes, by the prints on a sheet. */
  readonly perReplacement: (group: GroupPlan) => Decimal;
  readonly artworkId: string;
  readonly handMinutes: Decimal;
  readonly aloneMinutes: Decimal;
  readonly wear: Decimal;
  readonly supplies: Decimal;
  /** Kilowatt-hours that hold the press hot for one press. */
  readonly holdKwh: Decimal;
}

export interface SizePlan {
  readonly size: string;
  readonly pieces: Decimal;
  readonly blankPrice: Decimal;
  /** Without tax; null where none is decided. */
  readonly asked: Decimal | null;
}

export interface LinePlan {
  readonly id: string;
  readonly pieces: Decimal;
  readonly sizes: readonly SizePlan[];
  /** What of the amount its order pays once falls on one piece, without tax. */
  readonly startShare: Decimal;
  readonly placements: readonly PlacementPlan[];
  readonly blanksPerPiece: Decimal;
  readonly finishMinutes: Decimal;
  readonly packaging: Decimal;
  /** Artworks used on the line, each once. */
  readonly artworks: readonly string[];
}

export interface Plan {
  readonly lines: readonly LinePlan[];
  readonly pieces: Decimal;
  readonly sessions: Decimal;
  /** Minutes to prepare an artwork, and the good pieces that carry it. */
  readonly artworks: ReadonlyMap<string, { readonly prep: Decimal; readonly pieces: Decimal }>;
}

/** What is made, piece for piece: the yields of the presses, whole sheets by print size, shared artworks. */
export function planOf(input: JobInput, shop: Shop, perSheet: PrintsPerSheet, other?: OtherBatch): Plan {
  const lines = input.job.lines.map((_, index) => linePlan(input, index, shop, perSheet, other));
  const pieces = sum(lines.map((line) => line.pieces));
  const placements = input.job.lines.flatMap((line) => line.placements);
  const ready = placements.filter(({ artReady }) => artReady).map(({ artworkId }) => artworkId);
  const used = [...new Set(lines.flatMap((line) => line.artworks))].filter((id) => !ready.includes(id));
  return {
    lines,
    pieces,
    sessions: shop.piecesPerSession === null ? ONE : pieces.div(shop.piecesPerSession).ceil(),
    artworks: new Map(
      used.map((id) => [
        id,
        {
          prep: exact(known(input.artworks[id]?.prepMinutes, 'prep minutes').value),
          pieces: sum(lines.filter((line) => line.artworks.includes(id)).map((line) => line.pieces)),
        },
      ]),
    ),
  };
}

function linePlan(
  input: JobInput,
  index: number,
  shop: Shop,
  perSheet: PrintsPerSheet,
  other?: OtherBatch,
): LinePlan {
  const line = known(input.job.lines[index], 'line');
  const blank = known(input.blanks[line.blankId], 'blank');
  const asTyped = blank.sizes.flatMap(({ name, price }): SizePlan[] => {
    const wanted = line.quantities.filter(({ size }) => size === name).map(({ quantity }) => exact(quantity));
    const pieces = sum(wanted);
    if (pieces.lte(0)) return [];
    const upCharges = line.upCharges.filter(({ size }) => size === name).map(({ amount }) => exact(amount));
    const typed = line.askedPrice === null ? null : exact(line.askedPrice).plus(sum(upCharges));
    const asked = typed === null ? null : typed.div(shop.typedFactor);
    return [{ size: name, pieces, blankPrice: exact(known(price, 'blank price').value), asked }];
  });
  const ordered = sum(asTyped.map(({ pieces }) => pieces));
  const batch = other?.lineId === line.id ? exact(other.batch) : ordered;
  // What the order pays once is shared by all pieces of the line, in whatever size.
  const startShare =
    line.askedStart === null ? ZERO : exact(line.askedStart).div(shop.typedFactor).div(batch);
  const sizes = asTyped.map((size) => ({
    ...size,
    pieces: size.pieces.times(batch).div(ordered),
    asked: size.asked === null ? null : size.asked.plus(startShare),
  }));
  const yields = line.placements.map(({ scrap }) => ONE.minus(exact(known(scrap, 'scrap').value)));
  const placements = line.placements.map(
    (placement, at): PlacementPlan => ({
      ...pressOf(input, placement),
      entering: ONE.div(yields.slice(at).reduce((running, one) => running.times(one), ONE)),
      groups: groupsOf(input, line.id, placement, asTyped, { batch, ordered }, shop, perSheet),
    }),
  );
  const packaging = input.workshop.packagings.find(({ id }) => id === line.packagingId);
  const whole = ONE.minus(exact(known(blank.blankFault, 'blank fault').value));
  return {
    id: line.id,
    pieces: batch,
    sizes,
    startShare,
    placements,
    blanksPerPiece: known(placements[0], 'first press').entering.div(whole),
    finishMinutes: exact(known(blank.finishMinutes, 'finish minutes').value),
    packaging: packaging === undefined ? ZERO : exact(known(packaging.perPiece, 'packaging').value),
    artworks: [...new Set(line.placements.map(({ artworkId }) => artworkId))],
  };
}

function pressOf(input: JobInput, placement: Placement): Omit<PlacementPlan, 'entering' | 'groups'> {
  const press = known(
    input.workshop.presses.find(({ id }) => id === placement.pressId),
    'press',
  );
  const holdingShare = exact(known(press.holdingShare, 'holding share').value);
  const hot = exact(known(placement.hotMinutes, 'hot minutes').value);
  return {
    scrap: exact(known(placement.scrap, 'scrap').value),
    tests: exact(placement.testPresses),
    perReplacement: ({ perSheet, letters }) =>
      placement.replacements === 'alone' ? letters : letters.div(perSheet),
    artworkId: placement.artworkId,
    handMinutes: exact(known(placement.handMinutes, 'hand minutes').value),
    aloneMinutes: exact(known(placement.aloneMinutes, 'alone minutes').value),
    wear: pressWear(press),
    supplies: exact(known(press.protectivePaper, 'paper').value).plus(exact(known(press.tape, 'tape').value)),
    holdKwh: kwh(press.powerKw, hot).times(holdingShare),
  };
}

/** The sizes of each print size together: whole sheets are counted on their own pieces. */
function groupsOf(
  input: JobInput,
  lineId: string,
  placement: Placement,
  sizes: readonly SizePlan[],
  { batch, ordered }: { readonly batch: Decimal; readonly ordered: Decimal },
  shop: Shop,
  perSheet: PrintsPerSheet,
): readonly GroupPlan[] {
  const named = new Set(placement.prints.flatMap((print) => print.sizes ?? []));
  return placement.prints.flatMap((print, index): GroupPlan[] => {
    const own = sizes.filter(({ size }) => print.sizes?.includes(size) ?? !named.has(size));
    const pieces = sum(own.map((size) => size.pieces));
    if (pieces.isZero()) return [];
    const { across, letters } = stripOf(input, print) ?? wholeSheet(perSheet(lineId, placement.id, index));
    const areaM2 = exact(print.widthMm).times(exact(print.heightMm)).div(1e6);
    const coverage = coverageOver(known(input.artworks[placement.artworkId], 'artwork'), print, shop);
    return [
      {
        sizes: new Set(own.map(({ size }) => size)),
        pieces: pieces.times(batch).div(ordered),
        // One division, so that a whole number of sheets comes out whole.
        wholeSheets: pieces.times(batch).div(ordered.times(across)).ceil().times(letters),
        perSheet: across,
        letters,
        inkPerPrint: coverage.times(areaM2).times(shop.laydown).times(shop.inkFactor),
        areaM2,
      },
    ];
  });
}

const coverageOf = (coverage: Coverage): Decimal =>
  coverage.kind === 'total'
    ? exact(coverage.total)
    : sum([coverage.cyan, coverage.magenta, coverage.yellow, coverage.black].map(exact));

/**
 * Mean ink over the box of a print. Of a picture that was read, all three inks as they are before any black, less twice
 * the grey that the printer moves to black (ISO 32000-1, 10.3.4), on the part of the box that the picture fills.
 */
function coverageOver(
  { coverage, picture }: Artwork,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  shop: Shop,
): Decimal {
  if (coverage !== null) return coverageOf(coverage);
  const { width, height, coverage: inks } = known(picture, 'picture');
  const grey = exact(inks.black);
  const three = sum([inks.cyan, inks.magenta, inks.yellow].map(exact)).plus(grey.times(3));
  const box = { width: exact(widthMm), height: exact(heightMm) };
  const across = box.width.div(width);
  const down = box.height.div(height);
  const scale = across.lt(down) ? across : down;
  const filled = scale.times(width).times(scale.times(height)).div(box.width.times(box.height));
  return three.minus(grey.times(2).times(known(shop.blackShare, 'share of black'))).times(filled);
}
