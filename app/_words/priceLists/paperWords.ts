import { breakWords } from '@/app/_words/docket/breakWords';
import { orderRows } from '@/lib/price/list/orderRows';
import type { TaxMode } from '@/lib/priceLists/freezeItem';
import { formatMinor, type MinorUnits } from '@/shared/money';
import type { FrozenItem, ListedCharge, PriceListVersion } from '@/shared/schemas/priceList';

/** Writes amounts of a version as they stand on its paper: without the currency, which the paper names once. */
export type MoneyOf = (amount: number) => string;

export const moneyOf =
  (currency: string, locale: string): MoneyOf =>
  (amount) =>
    formatMinor(amount as MinorUnits, currency, locale);

/** How prices of a paper stand to tax. */
export const taxOnPaper: Readonly<Record<TaxMode, string>> = {
  added: 'tax is added to them',
  inside: 'tax is inside',
  none: 'no tax is charged on them',
};

/** How the breaks of an item are reckoned, where the buyer has to be told. */
export const ruleOnPaper: Readonly<Record<FrozenItem['selling'], string | null>> = {
  asListed: null,
  onePrice: null,
  capped: 'No order costs more than a larger one would.',
  slab: 'Each price holds for the pieces of its own step.',
  setUpApart: null,
};

const chargeNames: Readonly<Record<ListedCharge, (name: string) => string>> = {
  minimumOrder: () => 'Least order',
  // The prices bear these already: named as an addition, they would be paid twice.
  design: (name) => `Setting up ${name}, inside the prices`,
  sample: () => 'A pressed sample, taken off the order',
  placement: (name) => `${name}, inside the price of a piece`,
  name: () => 'A name, each',
  fold: () => 'Folding and bagging, a piece',
  split: () => 'Splitting an order by name',
  change: () => 'A change after approval',
  delivery: () => 'Delivery, inside the prices',
};

/** What the maker ticks, before it has a name of its own. */
export const chargeChoices: Readonly<Record<ListedCharge, string>> = {
  minimumOrder: 'Least order',
  design: 'What setting up a design is worth',
  sample: 'A pressed sample',
  placement: 'What a further print is worth',
  name: 'A name',
  fold: 'Folding and bagging',
  split: 'Splitting an order',
  change: 'A change after approval',
  delivery: 'What delivery is worth',
};

/** @returns sizes that add nothing, and each that adds something: “S to XL; XXL + 2.50”. */
export function sizesOnPaper(item: FrozenItem, money: MoneyOf): string {
  return sizeGroups(item)
    .map(({ names, adds }) => {
      const row = rowOfSizes(names);
      if (adds === 0 || item.sizes.length === 1) return row;
      return `${row} ${adds > 0 ? '+' : '−'} ${money(Math.abs(adds))}`;
    })
    .join('; ');
}

/** Sizes that follow each other and add the same. */
function sizeGroups({
  sizes,
}: FrozenItem): readonly { readonly names: readonly string[]; readonly adds: number }[] {
  const groups: { readonly names: string[]; readonly adds: number }[] = [];
  for (const { size, upCharge } of sizes) {
    const last = groups.at(-1);
    if (last !== undefined && last.adds === upCharge) last.names.push(size);
    else groups.push({ names: [size], adds: upCharge });
  }
  return groups;
}

const rowOfSizes = (names: readonly string[]): string =>
  names.length > 2 ? `${names[0]} to ${names.at(-1)}` : names.join(' and ');

/** A price of a paper as a buyer reads it. */
interface PaperPrice {
  /** For whom it holds: “from 4”, or sizes. */
  readonly of: string;
  readonly pays: string;
  /** Whether every piece pays it, or all together; null where that is no question. */
  readonly how: 'each' | 'together' | null;
  /** What no order of this break pays more than; null where none is held. */
  readonly atMost: string | null;
}

/**
 * The prices of an item in a row: one a size where it has one price, else one a break. Neighbours of one price stand
 * together, and small orders of a capped list are told as the sum they pay. Lists that went out when a cap acted on each
 * size keep the rows they had.
 */
export function pricesOnPaper(item: FrozenItem, money: MoneyOf): readonly PaperPrice[] {
  const { selling, capOn, breaks } = item;
  const plain = { how: null, atMost: null } as const;
  const [first] = breaks;
  if (selling === 'onePrice' && first !== undefined)
    return sizeGroups(item).map(({ names, adds }) => ({
      ...plain,
      of: rowOfSizes(names),
      pays: money(first.each + adds),
    }));
  const isTold = selling === 'capped' && capOn === 'base';
  const rows = orderRows({ rule: isTold ? selling : 'asListed', breaks });
  if (!isTold)
    return rows.map(({ from, to, amount }) => ({
      ...plain,
      of: breakWords({ from, to }),
      pays: money(amount),
    }));
  return rows.flatMap(({ from, to, kind, amount }, at): readonly PaperPrice[] => {
    const before = rows[at - 1];
    // What holds the last orders of a break is told beside its price.
    if (kind === 'together' && before?.kind === 'each') return [];
    if (kind !== 'each')
      return [{ of: breakWords({ from, to }), pays: money(amount), how: together(kind), atMost: null }];
    const after = rows[at + 1];
    return [
      {
        of: `from ${from}`,
        pays: money(amount),
        how: 'each',
        atMost: after?.kind === 'together' ? money(after.amount) : null,
      },
    ];
  });
}

const together = (kind: 'single' | 'together') => (kind === 'together' ? kind : null);

/** A charge of a paper, with the items it belongs to where they differ. */
interface PaperCharge {
  readonly key: string;
  readonly label: string;
  readonly amount: number;
}

/** @returns every charge of a version once; one that differs by item says of which. */
export function chargesOnPaper({ items }: Pick<PriceListVersion, 'items'>): readonly PaperCharge[] {
  const found = new Map<string, { readonly label: string; readonly amounts: Map<number, string[]> }>();
  for (const { name: item, charges } of items) {
    for (const { kind, name, amount } of charges) {
      const label = chargeNames[kind](name);
      const known = found.get(label) ?? { label, amounts: new Map<number, string[]>() };
      known.amounts.set(amount, [...(known.amounts.get(amount) ?? []), item]);
      found.set(label, known);
    }
  }
  return [...found.values()].flatMap(({ label, amounts }) =>
    [...amounts].map(([amount, names]) => ({
      key: `${label} ${amount}`,
      label: amounts.size === 1 ? label : `${label} (${names.join(', ')})`,
      amount,
    })),
  );
}
