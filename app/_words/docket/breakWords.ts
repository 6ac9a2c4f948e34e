import type { BreakSpan } from '@/lib/price/dearestQuantity';

/** @returns a span of quantities in words: “24 to 47”, “48 and up”. */
export function breakWords({ from, to }: BreakSpan): string {
  if (to === null) return `${from} and up`;
  return to === from ? `${from}` : `${from} to ${to}`;
}

/** @returns the same with what is counted: “1 piece”, “24 to 47 pieces”, “48 pieces and up”. */
export function breakPieceWords({ from, to }: BreakSpan): string {
  if (to === null) return `${from} ${from === 1 ? 'piece' : 'pieces'} and up`;
  return to === 1 ? '1 piece' : `${breakWords({ from, to })} pieces`;
}
