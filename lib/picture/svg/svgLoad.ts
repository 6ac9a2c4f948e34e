import { pictureLimits } from '@/lib/picture/pictureLimits';
import type { SvgLoad } from '@/lib/picture/pictureProblem';
import { type Load, svgOwnLoad } from './svgOwnLoad';
import { type SvgReference, svgReferences } from './svgReferences';
import { mayFit, svgStyles } from './svgStyles';
import { type SvgTags, svgTags } from './svgTags';

/** Beyond this only more of the same comes; counts of a small file can outgrow any number. */
const UNCOUNTED = 1e12;

/** Elements whose inside is drawn only where they are named. */
const ONLY_NAMED: readonly string[] = [
  'defs',
  'symbol',
  'pattern',
  'marker',
  'mask',
  'clipPath',
  'filter',
  'linearGradient',
  'radialGradient',
  'style',
  'title',
  'desc',
  'metadata',
];

/** Elements read, and comparisons of elements with rules of style; more make no picture. */
const MOST_ELEMENTS = 400_000;
const MOST_COMPARED = 4_000_000;

interface Node {
  readonly label: string;
  readonly own: Load;
  /** What it draws: its own inside, and what it names. */
  readonly drawn: { readonly at: number; readonly times: SvgReference['times'] }[];
}

/**
 * Counts what a browser would have to draw, without drawing it: a kilobyte of references to references can ask
 * for more shapes than there is time for. Each element is added up once, however often it is named.
 *
 * @param text with comments taken out
 * @returns what is too much, or null
 */
export function svgLoad(text: string): SvgLoad | null {
  const { mostShapes, mostCopies, mostEffects } = pictureLimits;
  const read = svgTags(text, MOST_ELEMENTS);
  const nodes = read.isWhole ? nodesOf(read) : null;
  if (nodes === null) return { what: 'elements', count: MOST_ELEMENTS, most: MOST_ELEMENTS };
  const total = added(nodes);
  if (typeof total === 'number') return { what: 'loop', name: nodes[total]?.label ?? '' };
  const written = nodes.reduce((sum, { own }) => sum + own.shapes, 0);
  const copies = total.shapes === UNCOUNTED ? UNCOUNTED : total.shapes - written;
  if (copies > mostCopies) return { what: 'copies', count: copies, most: mostCopies };
  if (total.shapes > mostShapes) return { what: 'shapes', count: total.shapes, most: mostShapes };
  return total.effects > mostEffects ? { what: 'effects', count: total.effects, most: mostEffects } : null;
}

/** @returns the elements with what each draws; null where there is too much to compare. */
function nodesOf({ tags, styles }: SvgTags): readonly Node[] | null {
  const nodes = tags.map(
    (tag): Node => ({ label: tag.attributes.get('id') ?? tag.name, own: svgOwnLoad(tag), drawn: [] }),
  );
  const byId = new Map<string, number>();
  for (const [at, { name, parent, attributes }] of tags.entries()) {
    const id = attributes.get('id');
    if (id !== undefined && !byId.has(id)) byId.set(id, at);
    if (!ONLY_NAMED.includes(name)) nodes[parent]?.drawn.push({ at, times: 'once' });
  }
  const rulesFor = svgStyles(styles);
  if (rulesFor === null) return null;
  let compared = 0;
  for (const [at, tag] of tags.entries()) {
    const rules = rulesFor(tag);
    compared += rules.reduce((sum, { references }) => sum + references.length, 0);
    if (compared > MOST_COMPARED) return null;
    const styled = rules.flatMap((rule) => (mayFit(rule, tag) ? rule.references : []));
    for (const { id, times } of [...svgReferences(tag), ...styled]) {
      const target = byId.get(id);
      if (target !== undefined) nodes[at]?.drawn.push({ at: target, times });
    }
  }
  return nodes;
}

/** @returns what the root comes to, or the place of an element that holds itself. */
function added(nodes: readonly Node[]): Load | number {
  const loads: (Load | 'open' | undefined)[] = [];
  // A list of its own in place of calls: elements may nest deeper than calls can.
  const way = [{ at: 0, next: 0 }];
  for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
    const drawn = nodes[here.at]?.drawn ?? [];
    const next = drawn[here.next];
    loads[here.at] ??= 'open';
    if (next === undefined) {
      loads[here.at] = sumOf(nodes[here.at], loads);
      way.pop();
      continue;
    }
    here.next += 1;
    if (loads[next.at] === 'open') return next.at;
    if (loads[next.at] === undefined) way.push({ at: next.at, next: 0 });
  }
  const total = loads[0];
  return total === undefined || total === 'open' ? nothing : total;
}

const nothing: Load = { shapes: 0, points: 0, effects: 0 };

function sumOf(node: Node | undefined, loads: readonly (Load | 'open' | undefined)[]): Load {
  if (node === undefined) return nothing;
  let sum: Load = node.own;
  const add = (load: Load, times: number) => {
    sum = {
      shapes: capped(sum.shapes + load.shapes * times),
      points: capped(sum.points + load.points * times),
      effects: capped(sum.effects + load.effects * times),
    };
  };
  const loadAt = (at: number): Load => {
    const load = loads[at];
    return load === undefined || load === 'open' ? nothing : load;
  };
  for (const { at, times } of node.drawn) if (times === 'once') add(loadAt(at), 1);
  // Paints and markers are handed down to everything inside, whose count is known only now.
  const { shapes, points } = sum;
  for (const { at, times } of node.drawn) {
    if (times !== 'once') add(loadAt(at), times === 'eachShape' ? shapes : points);
  }
  return sum;
}

const capped = (count: number): number => Math.min(count, UNCOUNTED);
