import { addDays } from '@/shared/days';
import type { FrozenItem, PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import type { FrozenOutcome, TaxMode } from './freezeItem';

/** Why a list cannot be issued, beside what its items say themselves. */
export type IssueRefusal = 'noItems' | 'itemsRefused' | 'mixedTax';

export type Issued =
  | { readonly kind: 'issued'; readonly version: PriceListVersion }
  | { readonly kind: 'refused'; readonly why: IssueRefusal };

/** @returns the next version of a list with its prices frozen, or why there can be none. */
export function issuePriceList(
  list: PriceList,
  outcomes: readonly { readonly kind: string }[],
  currency: string,
  day: string,
): Issued {
  const frozen = outcomes.flatMap((one): readonly { item: FrozenItem; taxMode: TaxMode }[] =>
    isFrozen(one) ? [one] : [],
  );
  const [first] = frozen;
  if (list.items.length === 0) return { kind: 'refused', why: 'noItems' };
  if (first === undefined || frozen.length < list.items.length)
    return { kind: 'refused', why: 'itemsRefused' };
  if (frozen.some(({ taxMode }) => taxMode !== first.taxMode)) return { kind: 'refused', why: 'mixedTax' };
  return {
    kind: 'issued',
    version: {
      number: (list.versions.at(-1)?.number ?? 0) + 1,
      issuedOn: day,
      validUntil: addDays(day, list.validDays),
      currency,
      taxMode: first.taxMode,
      title: list.name,
      from: list.from,
      notes: list.notes,
      leadTime: list.leadTime,
      items: frozen.map(({ item }) => item),
    },
  };
}

const isFrozen = (one: {
  readonly kind: string;
}): one is Extract<FrozenOutcome, { readonly kind: 'frozen' }> => one.kind === 'frozen';
