import type { PixelSize, VectorHeader } from '@/lib/picture/pictureHeader';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import { failed, ok, type Result } from '@/shared/result';
import { svgDanger } from './svgDanger';
import { svgLoad } from './svgLoad';
import { svgRoot } from './svgRoot';
import { withoutComments } from './withoutComments';

/** CSS pixels of one unit: CSS Values and Units Level 4, section 6.2. */
const PIXELS: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};
const LENGTH = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)([a-z]*)$/i;

/** The closing tag with a prefix and white space in it. */
const LONGEST_END = 200;

type Side =
  | { readonly kind: 'length'; readonly px: number }
  /** Not stated, or in a unit that depends on where the picture stands: percent, em, auto. */
  | { readonly kind: 'open' };

/**
 * What an SVG tells of its own shape. Sides in percent follow the viewBox; without any size the shape is not
 * known, and a guess would stretch the print.
 */
export function svgHeader(text: string, bytes: number): Result<VectorHeader, PictureProblem> {
  const root = svgRoot(text);
  if (root === null) return failed({ kind: 'damaged', format: 'svg', part: 'svg' });
  const plain = withoutComments(text).trimEnd();
  const danger = svgDanger(plain);
  if (danger !== null) return failed({ kind: 'svgUnsafe', ...danger });
  if (!root.isHollow && !/<\/(?:[\w.-]+:)?svg\s*>$/.test(plain.slice(-LONGEST_END))) {
    return failed({ kind: 'cutShort', format: 'svg', bytes });
  }
  const load = svgLoad(plain);
  if (load !== null) return failed({ kind: 'svgTooMuch', load });
  const width = sideOf(root.attributes.get('width'));
  const height = sideOf(root.attributes.get('height'));
  const viewBox = root.attributes.get('viewBox');
  const box = boxOf(viewBox);
  const given = ['width', 'height', 'viewBox']
    .flatMap((name) => {
      const value = root.attributes.get(name);
      return value === undefined ? [] : [`${name} ${value}`];
    })
    .join(', ');
  const lengths = [width, height].flatMap((side) => (side.kind === 'length' ? [side.px] : []));
  const every = [...lengths, ...(box === null ? [] : [box.width, box.height])];
  if (every.some((value) => value < 0)) return failed({ kind: 'svgSize', state: 'negative', given });
  if (every.some((value) => value === 0)) return failed({ kind: 'svgSize', state: 'zero', given });
  const size = shapeOf(width, height, box);
  if (size === null) return failed({ kind: 'svgSize', state: 'none', given });
  return ok({ kind: 'vector', format: 'svg', size, hasViewBox: box !== null });
}

function sideOf(text: string | undefined): Side {
  const match = text === undefined ? null : LENGTH.exec(text);
  const factor = match === null ? undefined : PIXELS[(match[2] ?? '').toLowerCase()];
  const value = Number(match?.[1]);
  return factor === undefined || !Number.isFinite(value)
    ? { kind: 'open' }
    : { kind: 'length', px: value * factor };
}

function boxOf(text: string | undefined): PixelSize | null {
  const numbers = (text ?? '').split(/[\s,]+/).map(Number);
  const [, , width, height] = numbers;
  if (text === undefined || numbers.length !== 4 || !numbers.every(Number.isFinite)) return null;
  return width === undefined || height === undefined ? null : { width, height };
}

/** One stated side takes the other from the viewBox, as browsers do. */
function shapeOf(width: Side, height: Side, box: PixelSize | null): PixelSize | null {
  if (width.kind === 'length' && height.kind === 'length') return { width: width.px, height: height.px };
  if (box === null) return null;
  if (width.kind === 'length') return { width: width.px, height: (width.px * box.height) / box.width };
  if (height.kind === 'length') return { width: (height.px * box.width) / box.height, height: height.px };
  return box;
}
