import type { SupplyItem } from '@/shared/schemas/supply';

/** @returns whether two things that are bought are the same. */
export const sameItem = (one: SupplyItem, other: SupplyItem): boolean => itemKey(one) === itemKey(other);

/** @returns what tells a thing that is bought from every other. */
export function itemKey(item: SupplyItem): string {
  switch (item.kind) {
    case 'blank':
      return `blank ${item.blankId} ${item.size}`;
    case 'paper':
      return `paper ${item.sheetId}`;
    case 'ink':
      return `ink ${item.printerId} ${item.name}`;
    case 'consumable':
      return `consumable ${item.consumableId}`;
    default:
      return item satisfies never;
  }
}
