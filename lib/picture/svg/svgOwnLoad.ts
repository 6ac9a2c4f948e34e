import { pathPoints } from './pathPoints';
import type { SvgTag } from './svgTags';

/** What drawing an element comes to. */
export interface Load {
  readonly shapes: number;
  /** Of paths and lines, at each of which a marker may stand. */
  readonly points: number;
  /** Surfaces of their own that are drawn, worked on and laid down again. */
  readonly effects: number;
}

/** A path of two hundred points costs about what two of a hundred do. */
const POINTS_OF_A_SHAPE = 100;
/** Letters are shapes too, of about ten points each. */
const LETTERS_OF_A_SHAPE = 10;

const SHAPES: readonly string[] = [
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
  'text',
  'tspan',
  'textPath',
  'image',
];
const GROUPS: readonly string[] = ['g', 'svg', 'use', 'a', 'switch', 'symbol'];
/** Children of a filter's steps, which are no steps themselves. */
const PARTS_OF_STEPS: readonly string[] = ['feMergeNode', 'feFuncR', 'feFuncG', 'feFuncB', 'feFuncA'];

/** @returns what an element draws by itself, without what it holds and names. */
export function svgOwnLoad({ name, attributes, letters }: SvgTag): Load {
  const effects = effectsOf(name, attributes);
  if (!SHAPES.includes(name)) return { shapes: 0, points: 0, effects };
  const points = name === 'line' ? 2 : pathPoints(attributes.get('d') ?? attributes.get('points') ?? '');
  const more = Math.floor(points / POINTS_OF_A_SHAPE) + Math.floor(letters / LETTERS_OF_A_SHAPE);
  return { shapes: 1 + more, points, effects };
}

function effectsOf(name: string, attributes: SvgTag['attributes']): number {
  if (name === 'mask') return 1;
  if (name.startsWith('fe') && !PARTS_OF_STEPS.includes(name)) {
    // Noise is made once an octave, and thickening looks around by its radius.
    const octaves = figure(attributes.get('numOctaves'));
    const radius = name === 'feMorphology' ? figure(attributes.get('radius')) : 0;
    return 1 + Math.floor(octaves / 10) + Math.floor(radius);
  }
  return GROUPS.includes(name) && isSheer(attributes) ? 1 : 0;
}

function isSheer(attributes: SvgTag['attributes']): boolean {
  const [, styled] = /(?:^|[;\s])opacity\s*:\s*([\d.]+)/i.exec(attributes.get('style') ?? '') ?? [];
  const opacity = styled ?? attributes.get('opacity');
  return opacity !== undefined && Number.parseFloat(opacity) < 1;
}

function figure(text: string | undefined): number {
  const value = Number.parseFloat(text ?? '');
  return Number.isFinite(value) && value > 0 ? Math.min(value, 1e9) : 0;
}
