import { predicted } from '@/lib/picture/unfilterRow';

const FILTERS = [0, 1, 2, 4] as const;
/** Every so manieth byte tells well enough which filter leaves least. */
const SAMPLE = 7;

/**
 * Filters a row so that it packs small: the filter that leaves the least is taken, as PNG Specification, third
 * edition, section 12.7 advises.
 *
 * @param step bytes of a pixel
 * @param into one byte longer: the filter's number comes first
 */
export function filterRow(line: Uint8Array, above: Uint8Array, step: number, into: Uint8Array): void {
  let best: number = FILTERS[0];
  let least = Number.POSITIVE_INFINITY;
  for (const filter of FILTERS) {
    let sum = 0;
    for (let at = 0; at < line.length; at += SAMPLE) {
      const left = (residue(filter, line, above, step, at) << 24) >> 24;
      sum += left < 0 ? -left : left;
    }
    if (sum < least) {
      least = sum;
      best = filter;
    }
  }
  into[0] = best;
  for (let at = 0; at < line.length; at += 1) into[at + 1] = residue(best, line, above, step, at);
}

function residue(filter: number, line: Uint8Array, above: Uint8Array, step: number, at: number): number {
  const left = at < step ? 0 : (line[at - step] ?? 0);
  const corner = at < step ? 0 : (above[at - step] ?? 0);
  return (line[at] ?? 0) - predicted(filter, left, above[at] ?? 0, corner);
}
