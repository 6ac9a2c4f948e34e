import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import { stockKey } from '@/lib/stock/stockKey';
import type { StockItem } from '@/shared/schemas/stock';

/** What is being noted of one thing, remembered until it is noted or closed. */
export const stockForm = (item: StockItem): OrderForm => ({
  ...{ orderId: 'stock', name: stockKey(item), isErased: false },
});

/** @returns whether something was typed of a thing and neither noted nor closed. */
export const isNoteBegun = (item: StockItem): boolean =>
  formMemory.begun('stock', stockForm(item).name).includes('');
