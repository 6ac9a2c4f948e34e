/** What comments cannot begin inside of, and how each ends. */
const WHOLES: readonly (readonly [string, string])[] = [
  ['<!--', '-->'],
  ['<![CDATA[', ']]>'],
  ['<?', '?>'],
];
const BEGINS = /<!--|<!\[CDATA\[|<\?/g;

/**
 * The text of an SVG without its comments, in one pass: a pattern would look through the whole rest again for
 * each comment that is never closed. What looks like a comment inside plain character data is none: taken for
 * one, it would hide everything up to the next.
 */
export function withoutComments(text: string): string {
  const parts: string[] = [];
  let from = 0;
  BEGINS.lastIndex = 0;
  for (let match = BEGINS.exec(text); match !== null; match = BEGINS.exec(text)) {
    const [begin, end] = WHOLES.find(([start]) => start === match[0]) ?? ['', ''];
    const at = text.indexOf(end, match.index + begin.length);
    if (at === -1) break;
    if (begin === '<!--') {
      parts.push(text.slice(from, match.index));
      from = at + end.length;
    }
    BEGINS.lastIndex = at + end.length;
  }
  return [...parts, text.slice(from)].join(' ');
}
