/** In this order: names hold commas, sums hold them too, and nobody's name holds a tab. */
const separators = ['\t', ';', '|', ','] as const;
export type Separator = (typeof separators)[number];

/**
 * The sign that parts the cells of a pasted table: the first that stands in at least half of its lines, else the one that
 * stands in most.
 *
 * @returns null where none stands anywhere: lines of a message
 */
export function separatorOf(text: string): Separator | null {
  // What stands between quotes parts nothing.
  const lines = text
    .replace(/"(?:[^"]|"")*"/g, '""')
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '');
  const holding = separators.map((separator) => ({
    separator,
    lines: lines.filter((line) => line.includes(separator)).length,
  }));
  const usual = holding.find((one) => one.lines > 0 && one.lines * 2 >= lines.length);
  const most = holding.toSorted((one, other) => other.lines - one.lines)[0];
  return usual?.separator ?? (most === undefined || most.lines === 0 ? null : most.separator);
}
