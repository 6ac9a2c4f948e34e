import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** A box on a page, from its top left, mm. */
export type PageBox = Pick<PlacedPiece, 'xMm' | 'yMm' | 'widthMm' | 'heightMm'>;

/** A page of transfers with what lies on it. */
interface WastePage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Border that the printer cannot reach. */
  readonly marginMm: number;
  /** Those without a picture too: their places are pressed all the same. */
  readonly pieces: readonly PageBox[];
}

/** Where a line may stand in the waste. */
export interface WasteStrip extends PageBox {
  /** Its words run from the bottom to the top. */
  readonly isUpright: boolean;
}

/** What is printed in the waste keeps this far from every piece, so that a cut between the two is easily made. */
const CLEAR_MM = 6;
/** Room for letters of 3 mm with their marks and tails. */
const LINE_HIGH_MM = 4.5;
/** The words that always stand there need about so much in the widest of usual types. */
const LEAST_LINE_MM = 110;

/** What has to be free between the art and the printer's border. */
export const stripRoom = { wideMm: CLEAR_MM + LINE_HIGH_MM, longMm: LEAST_LINE_MM };

/** More is hard to read at a glance, and would meet more marks of cuts. */
const MOST_LINE_MM = 200;
const MARK_LONG_MM = 4;
const MARK_HIGH_MM = 0.25;

/**
 * Where a line has room in waste that one cut straight across the page takes off, well clear of the art: along the top or
 * bottom, whichever has more, else along a side; as far from the art as the printer reaches. Null where there is none.
 */
export function wasteStrip({ widthMm, heightMm, marginMm, pieces }: WastePage): WasteStrip | null {
  if (pieces.length === 0) return null;
  const least = stripRoom.wideMm;
  const left = Math.min(...pieces.map(({ xMm }) => xMm)) - marginMm;
  const top = Math.min(...pieces.map(({ yMm }) => yMm)) - marginMm;
  const right = widthMm - marginMm - Math.max(...pieces.map((piece) => piece.xMm + piece.widthMm));
  const bottom = heightMm - marginMm - Math.max(...pieces.map((piece) => piece.yMm + piece.heightMm));
  const across = Math.min(MOST_LINE_MM, widthMm - 2 * marginMm);
  if (across >= LEAST_LINE_MM && Math.max(top, bottom) >= least) {
    const yMm = top >= bottom ? marginMm : heightMm - marginMm - LINE_HIGH_MM;
    return { xMm: marginMm, yMm, widthMm: across, heightMm: LINE_HIGH_MM, isUpright: false };
  }
  const along = Math.min(MOST_LINE_MM, heightMm - 2 * marginMm);
  if (along >= LEAST_LINE_MM && Math.max(left, right) >= least) {
    const xMm = left >= right ? marginMm : widthMm - marginMm - LINE_HIGH_MM;
    return { xMm, yMm: marginMm, widthMm: LINE_HIGH_MM, heightMm: along, isUpright: true };
  }
  return null;
}

/**
 * Short strokes at both edges of a roll where it is cut across: only those that are well clear of every piece and of the
 * line in the waste.
 *
 * @param cutsMm from the start of the page
 */
export function cutMarks(
  { widthMm, marginMm, pieces }: WastePage,
  cutsMm: readonly number[],
  strip: WasteStrip | null,
): readonly PageBox[] {
  return cutsMm
    .flatMap((atMm) =>
      [marginMm, widthMm - marginMm - MARK_LONG_MM].map((xMm) => ({
        xMm,
        yMm: atMm - MARK_HIGH_MM / 2,
        widthMm: MARK_LONG_MM,
        heightMm: MARK_HIGH_MM,
      })),
    )
    .filter((mark) => pieces.every((piece) => distance(mark, piece) >= CLEAR_MM))
    .filter((mark) => strip === null || distance(mark, strip) > 0);
}

const distance = (one: PageBox, other: PageBox): number =>
  Math.hypot(
    Math.max(0, one.xMm - other.xMm - other.widthMm, other.xMm - one.xMm - one.widthMm),
    Math.max(0, one.yMm - other.yMm - other.heightMm, other.yMm - one.yMm - one.heightMm),
  );
