/**
 * The text of an SVG without its comments, in one pass: a pattern would look through the whole rest again for
 * each comment that is never closed.
 */
export function withoutComments(text: string): string {
  const parts: string[] = [];
  let from = 0;
  for (let start = text.indexOf('<!--'); start !== -1; start = text.indexOf('<!--', from)) {
    const end = text.indexOf('-->', start + 4);
    if (end === -1) break;
    parts.push(text.slice(from, start));
    from = end + 3;
  }
  return [...parts, text.slice(from)].join(' ');
}
