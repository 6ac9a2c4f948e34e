import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { itemName } from '@/app/_words/supply/itemWords';

import { inkChannels } from '@/lib/stock/inkChannels';
import { sameItem, stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';

/** A thing to choose among all that can be bought. */
interface ItemChoice {
  readonly value: string;
  readonly label: string;
  readonly group: string;
  readonly item: SupplyItem;
}

type Shelves = Pick<ReadyWorkspace, 'blanks' | 'workshop' | 'consumables' | 'suppliers'>;

/** @returns everything that can be bought: sizes of the maker's own blanks, papers, inks, consumables. */
export function itemChoices(workspace: Shelves): readonly ItemChoice[] {
  const { blanks, workshop, consumables, suppliers } = workspace;
  const choice = (group: string, item: SupplyItem): ItemChoice => ({
    ...{ group, item },
    value: stockKey(item),
    label: itemName(item, workspace),
  });
  const offered = Object.values(suppliers).flatMap(({ offers }) => offers.map(({ item }) => item));
  const inks = [
    ...workshop.printers.flatMap((printer) =>
      inkChannels(printer).map((name) => ({ kind: 'ink', printerId: printer.id, name }) as const),
    ),
    ...offered.filter((item) => item.kind === 'ink'),
  ].filter((item, at, all) => all.findIndex((other) => sameItem(item, other)) === at);
  return [
    ...Object.entries(blanks).flatMap(([blankId, { name, sizes, suppliedBy }]) =>
      suppliedBy === 'maker'
        ? sizes.map((size) => choice(name, { kind: 'blank', blankId, size: size.name }))
        : [],
    ),
    ...workshop.sheets.map(({ id }) => choice('Paper', { kind: 'paper', sheetId: id })),
    ...Object.keys(consumables).map((id) => choice('Consumables', { kind: 'consumable', consumableId: id })),
    ...inks.map((item) => choice('Ink', item)),
  ];
}
