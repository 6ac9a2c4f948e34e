import { typing } from '@/app/_documents/typing';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { stockKey } from '@/lib/stock/stockKey';
import type { BuyingList, SupplyItem } from '@/shared/schemas/making/supply';
import type { FieldPath } from '@/shared/setIn';

/** One buying list as its screen has it. */
export interface BuyingOnScreen {
  readonly supply: SupplyOnScreen;
  readonly listId: string;
  readonly list: BuyingList;
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  /** The maker's own number; null follows the sums again. */
  readonly hold: (name: string, item: SupplyItem, quantity: number | null) => void;
  /** Where a thing is bought; null where it costs least. */
  readonly choose: (
    name: string,
    item: SupplyItem,
    offer: { readonly supplierId: string; readonly offerId: string } | null,
  ) => void;
}

export function buyingOnScreen(
  supply: SupplyOnScreen,
  workspace: Pick<ReadyWorkspace, 'edit' | 'setField'>,
  listId: string,
  list: BuyingList,
): BuyingOnScreen {
  const change = (label: string, to: (now: BuyingList) => BuyingList, key: string) =>
    void workspace.edit(label, [{ do: 'change', kind: 'buyingList', id: listId, to }], `${listId} ${key}`);
  const others = <Row extends { readonly item: SupplyItem }>(rows: readonly Row[], item: SupplyItem) =>
    rows.filter((row) => stockKey(row.item) !== stockKey(item));
  return {
    ...{ supply, listId, list },
    set: (label, path, value) =>
      void workspace.setField({ kind: 'buyingList', id: listId }, label, path, value),
    hold: (name, item, quantity) =>
      change(
        `To buy of ${name}`,
        (now) => ({
          ...now,
          held: [...others(now.held, item), ...(quantity === null ? [] : [{ item, quantity }])],
        }),
        `hold ${stockKey(item)} ${typing.act()}`,
      ),
    choose: (name, item, offer) =>
      change(
        `Where ${name} is bought`,
        (now) => ({
          ...now,
          chosen: [...others(now.chosen, item), ...(offer === null ? [] : [{ item, ...offer }])],
        }),
        `choose ${stockKey(item)} ${typing.act()}`,
      ),
  };
}
