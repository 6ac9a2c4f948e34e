import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { StockThing } from '@/app/_stock/StockRow';
import { formatterFor } from '@/app/_words/formatter';
import {
  bottleWords,
  reorderWords,
  reservedWords,
  stockroomWords,
  stockUnit,
  worthWords,
} from '@/app/_words/making/stockroomWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { bottleOf } from '@/lib/stock/bottleOf';
import { stockKey } from '@/lib/stock/stockKey';
import { stockOf } from '@/lib/stock/stockOf';
import type { StockGroup } from '@/lib/stock/stockroom';
import { stockWorth, valuesOf } from '@/lib/stock/stockWorth';
import type { useStockroom } from './useStockroom';

/** Rows of a group, each with what was paid for it, what is kept of it, and what is to be done. */
export function thingsOf(
  { things }: StockGroup,
  { values, reserved }: Pick<ReturnType<typeof useStockroom>, 'values' | 'reserved'>,
  { piles, workshop, consumables, suppliers }: ReadyWorkspace,
): readonly StockThing[] {
  const formatter = formatterFor(workshop);
  const locale = usableLocale(workshop.locale);
  return things.map(({ item, name, unit: counted }) => {
    const unit = stockUnit(counted);
    const own = reserved.get(stockKey(item));
    const kept = own === undefined ? { wrong: [], more: [] } : reservedWords(own, formatter, unit);
    const ready = stockOf(piles, item).ready?.quantity ?? null;
    const bottle = bottleOf(item, Object.values(suppliers));
    const reorderAt = item.kind === 'consumable' ? (consumables[item.consumableId]?.reorderAt ?? null) : null;
    return {
      item,
      name: name ?? stockroomWords.gone,
      unit,
      wrong: [
        ...kept.wrong,
        ...(reorderAt !== null && ready !== null && ready <= reorderAt
          ? [reorderWords(reorderAt, formatter, unit)]
          : []),
      ],
      more: [
        ...(bottle === null || ready === null || ready < 0
          ? []
          : [bottleWords(ready / bottle, bottle, formatter)]),
        ...kept.more,
        ...worthWords(stockWorth(valuesOf(values, item)), item.kind, formatter, locale, unit),
      ],
    };
  });
}
