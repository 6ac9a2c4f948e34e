import { type SvgTag, svgTags } from './svgTags';
import { withoutComments } from './withoutComments';

/** One font that live text asks for, by the names a drawing program gives it; the first is the one to tell. */
export type FontNames = readonly [string, ...string[]];

interface FontRule {
  /** Of the last part of its selector: element, `.class` and `#id`. */
  readonly words: readonly string[];
  readonly family: string;
}

const TEXT: readonly string[] = ['text', 'tspan', 'textPath'];
/** CSS Fonts Level 4, 2.1.2: every device has something for these. */
const GENERIC =
  /^(?:serif|sans-serif|monospace|cursive|fantasy|math|emoji|system-ui|ui-[\w-]+|inherit|initial|unset|revert|-apple-system|BlinkMacSystemFont)$/i;
const FAMILY = /(?:^|[;\s])font-family\s*:\s*([^;]+)/i;
/** The family is what follows the size in the short form. */
const SHORT = /(?:^|[;\s])font\s*:[^;]*?\d[\w.%]*(?:\s*\/\s*[\w.%]+)?\s+([^;]+)/i;
const MOST_FONTS = 20;
const LONGEST_NAME = 100;

/**
 * The fonts that the live text of a drawing names first. Of further names only other spellings of the same count, as
 * `MyriadPro-Regular, Myriad Pro`: another font in its place is another picture.
 *
 * @param most elements to read
 */
export function svgFonts(text: string, most: number): readonly FontNames[] {
  const { tags, styles } = svgTags(withoutComments(text), most);
  const { rules, embedded } = rulesOf(styles);
  const found = new Map<string, FontNames>();
  for (const tag of tags) {
    if (tag.letters === 0 || !TEXT.includes(tag.name)) continue;
    const [first, ...others] = namesIn(familyOf(tag, tags, rules) ?? '');
    if (first === undefined || GENERIC.test(first) || embedded.has(plain(first))) continue;
    found.set(plain(first), [first, ...others.filter((other) => isSameFont(first, other))]);
    if (found.size === MOST_FONTS) break;
  }
  return [...found.values()];
}

function familyOf(tag: SvgTag, tags: readonly SvgTag[], rules: readonly FontRule[]): string | null {
  for (let around: SvgTag | undefined = tag; around !== undefined; around = tags[around.parent]) {
    const { attributes } = around;
    const words = new Set([
      around.name,
      `#${attributes.get('id')}`,
      ...(attributes.get('class') ?? '').split(/\s+/).map((name) => `.${name}`),
    ]);
    const rule = rules.findLast((each) => each.words.every((word) => words.has(word)));
    const own = familyIn(attributes.get('style') ?? '') ?? rule?.family ?? attributes.get('font-family');
    if (own !== undefined && !/^\s*inherit\s*$/i.test(own)) return own;
  }
  return null;
}

function rulesOf(styles: string): {
  readonly rules: readonly FontRule[];
  readonly embedded: ReadonlySet<string>;
} {
  const rules: FontRule[] = [];
  const embedded = new Set<string>();
  for (const block of styles.split('}')) {
    const bracket = block.lastIndexOf('{');
    const family = bracket === -1 ? null : familyIn(block.slice(bracket + 1));
    if (family === null) continue;
    const before = block.slice(0, bracket);
    const selectors = before.slice(Math.max(before.lastIndexOf('{'), before.lastIndexOf(';')) + 1);
    if (/@font-face/i.test(selectors)) for (const name of namesIn(family)) embedded.add(plain(name));
    else
      for (const selector of selectors.split(',')) {
        const last =
          selector
            .trim()
            .split(/[\s>+~]+/)
            .at(-1) ?? '';
        rules.push({ words: last.match(/[.#]?[\w-]+/g) ?? [], family });
      }
  }
  return { rules, embedded };
}

const familyIn = (declarations: string): string | null =>
  (FAMILY.exec(declarations) ?? SHORT.exec(declarations))?.[1] ?? null;

const namesIn = (family: string): readonly string[] =>
  family
    .replace(/!\s*important/i, '')
    .split(',')
    .map((name) => name.replace(/["']/g, '').trim().slice(0, LONGEST_NAME))
    .filter((name) => name !== '');

const plain = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

const isSameFont = (one: string, other: string): boolean =>
  plain(one).startsWith(plain(other)) || plain(other).startsWith(plain(one));
