import type { SvgTag } from './svgTags';

/** A part of the drawing that an element has drawn, and how often. */
export interface SvgReference {
  readonly id: string;
  /** Once; or for each shape inside, as paints are handed down; or for each point of those shapes. */
  readonly times: 'once' | 'eachShape' | 'eachPoint';
}

/** The quotation mark and the blanks behind it are one group: apart, a long row of blanks could be split in many ways. */
const ADDRESS = /url\s*\(\s*(?:(?:&quot;|&apos;|["'])\s*)?#([^)"'&\s]+)/gi;
/** Elements that draw what their `href` names. */
const DRAW_HREF: readonly string[] = ['use', 'feImage', 'pattern'];

/** @returns the parts that an element has drawn by its attributes and its own style. */
export function svgReferences({ name, attributes }: SvgTag): readonly SvgReference[] {
  const found: SvgReference[] = [];
  for (const [attribute, value] of attributes) {
    if (!value.includes('#')) continue;
    if (attribute === 'style') found.push(...inDeclarations(value));
    else if (attribute !== 'href') found.push(...inValue(attribute, value));
    else if (DRAW_HREF.includes(name)) found.push({ id: value.trim().replace(/^#/, ''), times: 'once' });
  }
  return found;
}

/** @returns the parts that declarations such as `fill: url(#dots); marker: url(#arrow)` have drawn. */
export function inDeclarations(text: string): readonly SvgReference[] {
  if (!text.includes('#')) return [];
  return text.split(';').flatMap((declaration) => {
    const colon = declaration.indexOf(':');
    return colon === -1 ? [] : inValue(declaration.slice(0, colon), declaration.slice(colon + 1));
  });
}

function inValue(property: string, value: string): readonly SvgReference[] {
  const times = timesOf(property.trim().toLowerCase());
  return [...value.matchAll(ADDRESS)].map(([, id = '']) => ({ id, times }));
}

function timesOf(property: string): SvgReference['times'] {
  if (property.startsWith('marker')) return 'eachPoint';
  return property === 'fill' || property === 'stroke' ? 'eachShape' : 'once';
}
