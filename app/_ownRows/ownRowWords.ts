import { formatterFor, type TextContext } from '@/app/_words/formatter';
import type { OwnRow, OwnRowDriver } from '@/shared/schemas/ownRow';

/** Drivers of an own row, in words after “each”. */
export const driverChoices: readonly { readonly value: OwnRowDriver; readonly label: string }[] = [
  { value: 'order', label: 'order' },
  { value: 'design', label: 'design' },
  { value: 'session', label: 'session' },
  { value: 'sheet', label: 'sheet' },
  { value: 'press', label: 'press' },
  { value: 'piece', label: 'piece' },
];

/** @returns how an own row counts, in a few words. */
export function ownRowWords({ cost }: OwnRow, context: TextContext): string {
  if (cost.kind === 'formula') return 'by your formula';
  if (cost.amount === null) return `each ${cost.driver}, amount missing`;
  return `${formatterFor(context).money(cost.amount.value)} each ${cost.driver}`;
}
