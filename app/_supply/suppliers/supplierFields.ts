import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Outcome } from '@/app/_supply/useTaken';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import type { Supplier, SupplyItem } from '@/shared/schemas/making/supply';
import type { FieldPath } from '@/shared/setIn';

type Offer = Supplier['offers'][number];

/** What every part of a supplier's editor is given. */
export interface SupplierFields {
  readonly id: string;
  readonly supplier: Supplier;
  readonly workspace: ReadyWorkspace;
  readonly formatter: Formatter;
  readonly today: string;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  /** Changes an offer; a price that is typed bears the day. */
  readonly changeOffer: (label: string, offerId: string, to: (offer: Offer) => Offer) => void;
  /** @param each of those that the maker has no price of, currency units */
  readonly addOffers: (label: string, items: readonly SupplyItem[], each: number | null) => Outcome;
  readonly removeOffer: (label: string, offerId: string) => void;
  /** The id of the element a field is typed in. */
  readonly fieldId: (...path: FieldPath) => string;
}

export function supplierFields(
  workspace: ReadyWorkspace,
  id: string,
  supplier: Supplier,
  today: string,
): SupplierFields {
  const change = (label: string, to: (now: Supplier) => Supplier, key?: string) =>
    workspace.edit(label, [{ do: 'change', kind: 'supplier', id, to }], key);
  return {
    ...{ id, supplier, workspace, today },
    formatter: formatterFor(workspace.workshop),
    set: (label, path, value) => void workspace.setField({ kind: 'supplier', id }, label, path, value),
    changeOffer: (label, offerId, to) =>
      void change(
        label,
        (now) => ({ ...now, offers: now.offers.map((offer) => (offer.id === offerId ? to(offer) : offer)) }),
        `${id} ${offerId} ${label} ${typing.act()}`,
      ),
    addOffers: (label, items, typed) => {
      const offers = items.flatMap((item): readonly Offer[] => {
        const each = ownPrice(item, workspace) ?? typed;
        return each === null ? [] : [beginningOffer(item, each, workspace, today)];
      });
      return change(label, (now) => ({ ...now, offers: [...now.offers, ...offers] }));
    },
    removeOffer: (label, offerId) =>
      void change(label, (now) => ({ ...now, offers: now.offers.filter((offer) => offer.id !== offerId) })),
    fieldId: (...path) => ['supplier', id, ...path].join('-'),
  };
}

/** @returns what the maker reckons with already: the price of the blank's size or of the paper; null where none is known. */
export function ownPrice(
  item: SupplyItem,
  { blanks, workshop }: Pick<ReadyWorkspace, 'blanks' | 'workshop'>,
): number | null {
  if (item.kind === 'blank')
    return blanks[item.blankId]?.sizes.find(({ name }) => name === item.size)?.price?.value ?? null;
  if (item.kind === 'paper')
    return workshop.sheets.find(({ id }) => id === item.sheetId)?.price?.value ?? null;
  return null;
}

// Helpers

/** In the pack of the blank, where that is told. */
function beginningOffer(
  item: SupplyItem,
  each: number,
  { blanks }: Pick<ReadyWorkspace, 'blanks'>,
  today: string,
): Offer {
  const size =
    item.kind === 'blank' ? blanks[item.blankId]?.sizes.find(({ name }) => name === item.size) : undefined;
  const packSize = size?.packSize ?? 1;
  return {
    ...{ id: newId(), item, articleNumber: '', packSize, standsInFor: null },
    tiers: [{ from: packSize, each }],
    pricedOn: today,
  };
}
