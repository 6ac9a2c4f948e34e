import { inDeclarations, type SvgReference } from './svgReferences';
import type { SvgTag } from './svgTags';

/** A rule of a style element that names parts of the drawing, for one of its selectors. */
interface StyleRule {
  readonly tag: string;
  readonly ids: readonly string[];
  readonly classes: readonly string[];
  readonly references: readonly SvgReference[];
}

/** Finds the rules that an element has to be compared with. */
type RulesFor = (tag: SvgTag) => readonly StyleRule[];

/** Selectors read; no drawing program writes as many. */
const MOST_SELECTORS = 50_000;

/**
 * Reads the rules that name parts of the drawing. Of a selector only the last part is kept: rather too many
 * elements are taken to fit than too few.
 *
 * @returns null where there are too many
 */
export function svgStyles(styles: string): RulesFor | null {
  const byKey = new Map<string, StyleRule[]>();
  let count = 0;
  for (const block of styles.split('}')) {
    const bracket = block.lastIndexOf('{');
    const references = inDeclarations(block.slice(bracket + 1));
    if (bracket === -1 || references.length === 0) continue;
    const before = block.slice(0, bracket);
    const selectors = before.slice(Math.max(before.lastIndexOf('{'), before.lastIndexOf(';')) + 1);
    for (const selector of selectors.split(',')) {
      count += 1;
      if (count > MOST_SELECTORS) return null;
      const rule = { ...lastPart(selector), references };
      const key = keyOf(rule);
      const alike = byKey.get(key);
      if (alike === undefined) byKey.set(key, [rule]);
      else alike.push(rule);
    }
  }
  if (byKey.size === 0) return () => [];
  return ({ name, attributes }) =>
    [...[...classesOf(attributes)].map((one) => `.${one}`), `#${attributes.get('id')}`, name, '*'].flatMap(
      (key) => byKey.get(key) ?? [],
    );
}

/** @returns whether a rule may fit an element, among those found for it. */
export function mayFit({ tag, ids, classes }: StyleRule, { name, attributes }: SvgTag): boolean {
  if (tag !== '' && tag !== name) return false;
  if (ids.some((id) => attributes.get('id') !== id)) return false;
  if (classes.length === 0) return true;
  const own = classesOf(attributes);
  return classes.every((one) => own.has(one));
}

function keyOf({ tag, ids: [id], classes: [first] }: Omit<StyleRule, 'references'>): string {
  if (first !== undefined) return `.${first}`;
  if (id !== undefined) return `#${id}`;
  return tag === '' ? '*' : tag;
}

/** Split once an element, which is compared with one rule after the other. */
const classesSplit = new WeakMap<SvgTag['attributes'], ReadonlySet<string>>();

function classesOf(attributes: SvgTag['attributes']): ReadonlySet<string> {
  const known = classesSplit.get(attributes);
  if (known !== undefined) return known;
  const found = new Set((attributes.get('class') ?? '').split(/\s+/).filter((one) => one !== ''));
  classesSplit.set(attributes, found);
  return found;
}

function lastPart(selector: string): Omit<StyleRule, 'references'> {
  const last =
    selector
      .trim()
      .split(/[\s>+~]+/)
      .at(-1) ?? '';
  const [tag = ''] = /^[\w|-]+/.exec(last) ?? [];
  const named = (sign: string) =>
    [...last.matchAll(/([.#])([\w-]+)/g)].flatMap(([, mark, word = '']) => (mark === sign ? [word] : []));
  return { tag: tag.slice(tag.indexOf('|') + 1), ids: named('#'), classes: named('.') };
}
