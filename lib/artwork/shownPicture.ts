import { INK_STRIPS, type Picture } from '@/shared/schemas/picture';
import { meanWithin } from './meanWithin';

/** The part of a picture that prints, as shares of its width and height. */
export interface ShownPart {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** @returns what of a picture is printed; null for all of it. */
export function shownPart({ trimmed, content, width, height }: Picture): ShownPart | null {
  if (!trimmed || content === null) return null;
  return {
    x: content.x / width,
    y: content.y / height,
    width: content.width / width,
    height: content.height / height,
  };
}

/**
 * A picture as it prints: one whose clear edges are trimmed is as large as what it holds, and its figures are those of
 * that part. All its ink lies there, so that none is lost or added.
 */
export function shownPicture(picture: Picture): Picture {
  const part = shownPart(picture);
  if (part === null || picture.content === null) return picture;
  const { content, coverage, grey } = picture;
  const denser = 1 / (part.width * part.height);
  const share = (value: number) => Math.min(1, value * denser);
  return {
    ...picture,
    width: content.width,
    height: content.height,
    content: { ...content, x: 0, y: 0 },
    coverage: {
      cyan: share(coverage.cyan),
      magenta: share(coverage.magenta),
      yellow: share(coverage.yellow),
      black: share(coverage.black),
    },
    heavyShare: share(picture.heavyShare),
    paleShare: share(picture.paleShare),
    whiteShare: share(picture.whiteShare),
    enclosedWhiteShare: share(picture.enclosedWhiteShare),
    inkAcross: within(picture.inkAcross, part.x, part.width),
    inkDown: within(picture.inkDown, part.y, part.height),
    grey: grey && {
      across: within(grey.across, part.x, part.width),
      down: within(grey.down, part.y, part.height),
      floodShares: grey.floodShares.map(share),
    },
  };
}

/** Strips of a stretch, as multiples of the mean of that stretch when all ink lies in it. */
const within = (strips: readonly number[], from: number, length: number): number[] =>
  Array.from(
    { length: INK_STRIPS },
    (_, at) => meanWithin(strips, from + (at * length) / INK_STRIPS, length / INK_STRIPS) * length,
  );
