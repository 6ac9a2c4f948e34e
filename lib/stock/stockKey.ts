import { canonicalText } from '@/lib/stored/canonicalText';
import type { StockItem } from '@/shared/schemas/stock';
import type { SupplyItem } from '@/shared/schemas/supply';

/** @returns the same text for the same thing, whatever its lot. */
export const stockKey = (item: StockItem | SupplyItem): string =>
  canonicalText(item.kind === 'blank' ? { ...item, lot: null } : item);
