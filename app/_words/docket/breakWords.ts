import type { BreakSpan } from '@/lib/price/list/breakStarts';

/** @returns a span of quantities in words: “24 to 47”, “48 and up”. */
export function breakWords({ from, to }: BreakSpan): string {
  if (to === null) return `${from} and up`;
  return to === from ? `${from}` : `${from} to ${to}`;
}
