import type { Blank, BlankSize, Position } from '@/shared/schemas/blank';
import type { Print } from '@/shared/schemas/job';

/** A piece and its print as lines to draw, in millimetres of the piece. */
interface PieceDrawing {
  readonly box: readonly [x: number, y: number, width: number, height: number];
  /** Outlines of the piece, the ones behind first. */
  readonly outlines: readonly string[];
  readonly print: Box;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Drawn {
  readonly blank: Pick<Blank, 'kind' | 'substrate'>;
  readonly size: Pick<BlankSize, 'widthMm' | 'wrap'> | undefined;
  readonly position: Position;
  readonly print: Pick<Print, 'widthMm' | 'heightMm'>;
  readonly dropFromCollarMm: number | null;
}

/* Widths of common goods where nobody measured: from memory; they only draw. */
const SHIRT_MM = 510;
const BAG_MM = 380;
const CUSHION_MM = 400;
const MUG_ROUND_MM = 258;

/** Draws a piece to scale with the box of one print where it sits. */
export function pieceDrawing(drawn: Drawn): PieceDrawing {
  const { kind } = drawn.blank;
  switch (kind) {
    case 'garment':
      return shirt(drawn);
    case 'bag':
      return bag(drawn);
    case 'cushion':
      return cushion(drawn);
    case 'drinkware':
      return drinkware(drawn);
    case 'panel':
    case 'mat':
    case 'tile':
    case 'small':
      return plate(drawn);
    default:
      return kind satisfies never;
  }
}

// Helpers

function shirt({ size, position, print, dropFromCollarMm }: Drawn): PieceDrawing {
  const w = size?.widthMm ?? SHIRT_MM;
  const collar = position === 'back' ? 0.04 * w : 0.11 * w;
  const points = [
    [1, 0.1],
    [1.3, 0.44],
    [1.1, 0.58],
    [1, 0.47],
    [1, 1.36],
    [0, 1.36],
    [0, 0.47],
    [-0.1, 0.58],
    [-0.3, 0.44],
    [0, 0.1],
  ].map(([x = 0, y = 0]) => `L${x * w} ${y * w}`);
  const body = `M${0.32 * w} 0Q${w / 2} ${2 * collar} ${0.68 * w} 0${points.join('')}Z`;
  const onSleeve = position === 'leftSleeve' || position === 'rightSleeve';
  // The left of the wearer is on the right of whoever looks.
  const middle =
    w / 2 +
    (onSleeve ? 0.62 : 0.21) * w * (position.startsWith('left') ? 1 : position.startsWith('right') ? -1 : 0);
  const top = onSleeve ? 0.3 * w : collar + (dropFromCollarMm ?? 0.15 * w);
  return {
    box: framed(-0.3 * w, 0, 1.6 * w, 1.36 * w),
    outlines: [body],
    print: centred(print, middle, top + print.heightMm / 2),
  };
}

function bag({ size, print }: Drawn): PieceDrawing {
  const w = size?.widthMm ?? BAG_MM;
  const h = 1.08 * w;
  const handle = `M${0.28 * w} 0C${0.28 * w} ${-0.6 * w} ${0.72 * w} ${-0.6 * w} ${0.72 * w} 0`;
  return {
    box: framed(0, -0.46 * w, w, h + 0.46 * w),
    outlines: [handle, `M0 0H${w}V${h}H0Z`],
    print: centred(print, w / 2, h / 2),
  };
}

function cushion({ size, print }: Drawn): PieceDrawing {
  const w = size?.widthMm ?? CUSHION_MM;
  const pinch = 0.04 * w;
  return {
    box: framed(0, 0, w, w),
    outlines: [
      `M0 0Q${w / 2} ${pinch} ${w} 0Q${w - pinch} ${w / 2} ${w} ${w}Q${w / 2} ${w - pinch} 0 ${w}Q${pinch} ${w / 2} 0 0Z`,
    ],
    print: centred(print, w / 2, w / 2),
  };
}

/** Seen from the side: of a print that runs round, the half that faces. */
function drinkware({ blank, size, print }: Drawn): PieceDrawing {
  const across = (size?.wrap?.circumferenceMm ?? MUG_ROUND_MM) / Math.PI;
  const isTumbler = blank.substrate.startsWith('steelTumbler');
  const h = Math.max(isTumbler ? 2.1 * across : 1.16 * across, print.heightMm * 1.08);
  const seen = print.widthMm >= (Math.PI * across) / 2 ? across : across * Math.sin(print.widthMm / across);
  const handle = `M${across} ${0.2 * h}C${1.45 * across} ${0.15 * h} ${1.45 * across} ${0.8 * h} ${across} ${0.75 * h}`;
  return {
    box: framed(0, 0, isTumbler ? across : 1.36 * across, h),
    outlines: [...(isTumbler ? [] : [handle]), `M0 0H${across}V${h}H0Z`],
    print: centred({ widthMm: seen, heightMm: print.heightMm }, across / 2, h / 2),
  };
}

/** As wide as it is known to be, else a little wider than its print; its print tells how high. */
function plate({ size, print }: Drawn): PieceDrawing {
  const w = size?.widthMm ?? 1.1 * print.widthMm;
  const h = (w * print.heightMm) / print.widthMm;
  return {
    box: framed(0, 0, w, h),
    outlines: [`M0 0H${w}V${h}H0Z`],
    print: centred(print, w / 2, h / 2),
  };
}

const centred = ({ widthMm, heightMm }: Drawn['print'], x: number, y: number): Box => ({
  x: x - widthMm / 2,
  y: y - heightMm / 2,
  width: widthMm,
  height: heightMm,
});

/** A little ground around, so that no line is cut. */
function framed(x: number, y: number, width: number, height: number): PieceDrawing['box'] {
  const edge = 0.03 * Math.max(width, height);
  return [x - edge, y - edge, width + 2 * edge, height + 2 * edge];
}
