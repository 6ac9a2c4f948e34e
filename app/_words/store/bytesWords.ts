import type { Formatter } from '@/app/_words/formatter';

const UNITS = ['kB', 'MB', 'GB', 'TB'] as const;

/**
 * The size of a file as the systems of phones and computers tell it, in thousands.
 *
 * @example bytesWords(31_400_000, formatter) // '31 MB'
 */
export function bytesWords(bytes: number, formatter: Pick<Formatter, 'number'>): string {
  if (bytes < 1000) return `${formatter.number(bytes, 0)} bytes`;
  let size = bytes / 1000;
  let unit = 0;
  // What rounds to a thousand is one of the next: “1,000 kB” is 1 MB.
  while (size >= 999.5 && unit < UNITS.length - 1) {
    size /= 1000;
    unit += 1;
  }
  return `${formatter.number(size, size < 10 ? 1 : 0)} ${UNITS[unit]}`;
}
