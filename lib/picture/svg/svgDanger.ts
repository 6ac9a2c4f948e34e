import type { SvgDanger } from '@/lib/picture/pictureProblem';
import { plainLetters } from './plainLetters';

/*
 * A picture of lines needs none of these, so a file that holds one is refused and not cleaned: what is removed
 * wrongly is still there. Names are looked for anywhere, since a false alarm costs a new export and a miss
 * costs the maker's documents.
 */
const RULES: readonly (readonly [SvgDanger, RegExp])[] = [
  // A document type may define names that stand for scripts, or for each other a billion times over.
  ['entity', /<!ENTITY|<!DOCTYPE[^>]{0,999}\[/i],
  ['script', /<(?:[\w.-]+:)?(?:script|handler|listener)[\s/>]|javascript:|vbscript:/i],
  ['handler', /[\s"'/]on[a-z]+\s*=/i],
  ['embedded', /<(?:[\w.-]+:)?(?:foreignObject|iframe|embed|object|audio|video|canvas)[\s/>]/i],
  ['outside', /<\?xml-stylesheet|@import|xml:base/i],
  // Moving a reference could point it anywhere once the file is open.
  ['outside', /attributeName\s*=\s*["']\s*(?:[\w.-]+:)?href/i],
];

/** A reference may name a part of the same file or carry a picture of pixels within itself. */
const REFERENCE = /(?:^|[\s"'/:])(?:href|src)\s*=\s*(?:"([^"]*)"|'([^']*)')/gi;
const STYLE_REFERENCE = /(?:url|src|image-set|image)\s*\(\s*(?:&quot;|&apos;|["'])?\s*([^)"']*)/gi;
const INSIDE = /^(?:#|$|data:image\/(?:png|jpe?g|gif|webp)[;,])/i;
const LONGEST_QUOTE = 80;

/**
 * Looks for scripts, foreign content and references that leave the file, with comments taken out already.
 *
 * @returns the first one found with a piece of the text around it, or null
 */
export function svgDanger(text: string): { readonly found: SvgDanger; readonly text: string } | null {
  const plain = plainLetters(text);
  for (const [found, pattern] of RULES) {
    const match = pattern.exec(plain);
    if (match !== null) return { found, text: quote(plain.slice(match.index)) };
  }
  for (const pattern of [REFERENCE, STYLE_REFERENCE]) {
    for (const match of plain.matchAll(pattern)) {
      const target = (match[1] ?? match[2] ?? '').trim();
      if (!INSIDE.test(target)) return { found: 'outside', text: quote(target) };
    }
  }
  return null;
}

const quote = (text: string) => text.replace(/\s+/g, ' ').slice(0, LONGEST_QUOTE).trim();
