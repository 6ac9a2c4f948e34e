import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockGrade } from '@/shared/schemas/stock';

/** @returns one text for goods of a grade on a shop's shelf, by which they are told from all others. */
export const shelfKey = (goods: StallGoods, grade: StockGrade): string => `${goodsKey(goods)} ${grade}`;
