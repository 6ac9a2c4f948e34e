import { shownPart, shownPicture } from '@/lib/artwork/shownPicture';
import type { Where } from '@/shared/finding';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job, Line, Placement } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import type { JobInput } from '@/shared/schemas/request';
import { blankTypicals, otherTypicals, placementTypicals } from '@/shared/tables/typicalRates';
import { blackShareOf } from './blackShareOf';
import type { ResolvedLine, ResolvedPlacement, ResolvedSize } from './checkedJob';
import { coverageOfArtwork } from './coverageOfArtwork';
import { ownEntry } from './ownEntry';
import { resolvePackaging, resolvePress } from './resolveMachines';
import type { TakeRate } from './usedRate';

/**
 * One line with its blank, artworks and presses found and its rates filled in.
 *
 * @returns null where something it names is missing; `missingReferences` tells what
 */
export function resolveLine(
  input: JobInput,
  line: Line,
  lineIndex: number,
  take: TakeRate,
): ResolvedLine | null {
  const blank = ownEntry(input.blanks, line.blankId);
  if (blank === undefined) return null;
  const placements: ResolvedPlacement[] = [];
  for (const [index, placement] of line.placements.entries()) {
    const resolved = resolvePlacement(input, line, placement, [lineIndex, index], take);
    if (resolved === null) return null;
    placements.push(resolved);
  }
  const { workshop } = input;
  const packaging = workshop.packagings.find(({ id }) => id === line.packagingId);
  if (line.packagingId !== null && packaging === undefined) return null;
  const typical = blankTypicals[blank.kind];
  const at = (field: string): Where => ({ document: 'blank', id: line.blankId, path: [field] });
  const ofBlank = { of: blank.name, needed: true, whenMissing: 'caution' } as const;
  return {
    line,
    blank,
    blankFault: take({
      ...ofBlank,
      rate: blank.blankFault,
      typical: typical.blankFault,
      where: at('blankFault'),
    }),
    finishMinutes: take({
      ...ofBlank,
      rate: blank.finishMinutes,
      typical: typical.finishMinutes,
      where: at('finishMinutes'),
    }),
    packaging: packaging ? resolvePackaging(workshop, packaging, take) : null,
    sizes: resolveSizes(line, blank, input.asOf, take),
    placements,
  };
}

/** Sizes the blank lacks are left out here; QTY-04 stops the job for them. */
function resolveSizes(line: Line, blank: Blank, asOf: string, take: TakeRate): readonly ResolvedSize[] {
  return blank.sizes.flatMap((size, index) => {
    if (blank.sizes.findIndex(({ name }) => name === size.name) !== index) return [];
    const quantity = line.quantities
      .filter((wanted) => wanted.size === size.name)
      .reduce((sum, wanted) => sum + wanted.quantity, 0);
    if (!(quantity > 0)) return [];
    const upCharge = line.upCharges
      .filter((charge) => charge.size === size.name)
      .reduce((sum, charge) => sum + charge.amount, 0);
    const blankPrice = priceOfSize(line, blank, index, asOf, take);
    const askedPrice = line.askedPrice === null ? null : line.askedPrice + upCharge;
    return [{ size: size.name, quantity, blankPrice, askedPrice, askedStart: line.askedStart }];
  });
}

/** What the customer brings costs the maker nothing, whatever the blank would cost to buy. */
function priceOfSize(line: Line, blank: Blank, index: number, asOf: string, take: TakeRate): Rate {
  const size = blank.sizes[index];
  if (blank.suppliedBy === 'customer') return { value: 0, unit: 'money/piece', date: asOf, origin: 'yours' };
  return take({
    rate: size?.price ?? null,
    typical: blankTypicals[blank.kind].price,
    where: {
      document: 'blank',
      id: line.blankId,
      path: ['sizes', index, 'price'],
      lineId: line.id,
      ...(size === undefined ? {} : { size: size.name }),
    },
    of: size === undefined ? blank.name : `${blank.name} ${size.name}`,
    // A price that is missing is told once, by QTY-04.
    needed: size?.price != null,
    whenMissing: 'stop',
  });
}

function resolvePlacement(
  input: JobInput,
  line: Line,
  placement: Placement,
  [lineIndex, index]: readonly [number, number],
  take: TakeRate,
): ResolvedPlacement | null {
  const { workshop, artworks } = input;
  const kept = ownEntry(artworks, placement.artworkId);
  const artwork = kept === undefined ? undefined : asPrinted(kept);
  const press = workshop.presses.find(({ id }) => id === placement.pressId);
  if (artwork === undefined || press === undefined) return null;
  const typical = placementTypicals[press.kind];
  const of = (field: keyof typeof typical) =>
    take({
      rate: placement[field],
      typical: typical[field],
      where: {
        document: 'job',
        path: ['lines', lineIndex, 'placements', index, field],
        lineId: line.id,
        placementId: placement.id,
      },
      of: placement.name,
      needed: true,
      whenMissing: 'caution',
    });
  return {
    placement,
    artwork,
    press: resolvePress(workshop, press, take),
    scrap: of('scrap'),
    handMinutes: of('handMinutes'),
    aloneMinutes: of('aloneMinutes'),
    hotMinutes: of('hotMinutes'),
    totalCoverage: coverageOfArtwork(artwork, blackShareOf(input)),
    prepMinutes: take({
      rate: artwork.prepMinutes,
      typical: otherTypicals.prepMinutes,
      where: { document: 'artwork', id: placement.artworkId, path: ['prepMinutes'] },
      of: artwork.name,
      needed: true,
      whenMissing: 'caution',
    }),
    isArtReady: isArtReady(input.job, placement.artworkId),
  };
}

const isArtReady = ({ lines }: Job, artworkId: string): boolean =>
  lines.some(({ placements }) =>
    placements.some((one) => one.artworkId === artworkId && one.artReady === true),
  );

/** An artwork whose picture is trimmed has the pixels of what is left. */
function asPrinted(artwork: Artwork): Artwork {
  if (artwork.picture === null || shownPart(artwork.picture) === null) return artwork;
  const picture = shownPicture(artwork.picture);
  const pixels = artwork.pixels === null ? null : { width: picture.width, height: picture.height };
  return { ...artwork, picture, pixels };
}
