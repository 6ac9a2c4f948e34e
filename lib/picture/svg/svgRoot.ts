interface SvgRoot {
  /** Where the root tag begins and ends in the text. */
  readonly from: number;
  readonly to: number;
  readonly attributes: ReadonlyMap<string, string>;
  /** True where the root is closed by its own tag and holds nothing. */
  readonly isHollow: boolean;
}

/** What may stand before the root: white space, declarations, comments and a document type. */
const PROLOGUE = /^(?:\s+|\uFEFF|<\?[\s\S]*?\?>|<!--[\s\S]*?-->|<!DOCTYPE[^[>]*(?:\[[^\]]*\]\s*)?>)*/i;
const ROOT = /^<(?:[\w.-]+:)?svg(?=[\s/>])(?:"[^"]*"|'[^']*'|[^"'>])*>/;
const ATTRIBUTE = /([^\s"'=/<>]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** Editors write long comments before the root; longer ones than this are no drawing. */
const SEARCHED_LETTERS = 65_536;

/** @returns the root tag of an SVG, or null where the text is none. */
export function svgRoot(text: string): SvgRoot | null {
  const beginning = text.slice(0, SEARCHED_LETTERS);
  const from = PROLOGUE.exec(beginning)?.[0].length ?? 0;
  const tag = ROOT.exec(beginning.slice(from))?.[0];
  if (tag === undefined) return null;
  const attributes = new Map<string, string>();
  for (const [, name, double, single] of tag.matchAll(ATTRIBUTE)) {
    if (name !== undefined) attributes.set(name, (double ?? single ?? '').trim());
  }
  return { from, to: from + tag.length, attributes, isHollow: tag.endsWith('/>') };
}
