import { type ShownPart, shownPart } from '@/lib/artwork/shownPicture';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedPiece } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';

/** What is known of the print a piece is. */
interface NamedPrint {
  readonly key: string;
  readonly name: string;
  readonly lineName: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly artworkId: string;
  readonly fit: 'inside' | 'fill' | 'stretch';
  /** Sizes that get it; null for all that no other names. */
  readonly sizes: readonly string[] | null;
  readonly isOnlySize: boolean;
  /** Whether the picture lies mirrored on the paper. */
  readonly reversed: boolean;
  /** Whether the file has to be flipped for that. */
  readonly flipped: boolean;
  /** The part of the picture that is printed; null for all of it. */
  readonly shown: ShownPart | null;
}

/** @returns the print of a piece by its names in the job. */
export function namedPrint(
  { job, artworks }: JobInput,
  { lineId, placementId, print }: Pick<PlannedPiece, 'lineId' | 'placementId' | 'print'>,
): NamedPrint {
  const line = job.lines.find(({ id }) => id === lineId);
  const placement = line?.placements.find(({ id }) => id === placementId);
  const size = placement?.prints[print];
  const flipped = placement?.mirror ?? true;
  const artwork = ownEntry(artworks, placement?.artworkId ?? '');
  return {
    key: `${lineId} ${placementId} ${print}`,
    name: placement?.name ?? placementId,
    lineName: line?.name ?? lineId,
    widthMm: size?.widthMm ?? 0,
    heightMm: size?.heightMm ?? 0,
    artworkId: placement?.artworkId ?? '',
    fit: placement?.fit ?? 'inside',
    sizes: size?.sizes ?? null,
    isOnlySize: placement === undefined || placement.prints.length === 1,
    // A picture that is flipped already and sent mirrored lies the right way round on the paper.
    reversed: flipped !== (artwork?.mirrored ?? false),
    flipped,
    shown: artwork?.picture ? shownPart(artwork.picture) : null,
  };
}

/** @returns the prints on a sheet with how many of each, in the order they lie. */
export function printsOn(
  input: JobInput,
  pieces: readonly PlannedPiece[],
): readonly { readonly print: NamedPrint; readonly count: number }[] {
  const found = new Map<string, { readonly print: NamedPrint; readonly count: number }>();
  for (const piece of pieces) {
    const print = namedPrint(input, piece);
    found.set(print.key, { print, count: (found.get(print.key)?.count ?? 0) + 1 });
  }
  return [...found.values()];
}
