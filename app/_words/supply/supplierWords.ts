import type { Formatter } from '@/app/_words/formatter';
import type { Consumable, Supplier } from '@/shared/schemas/making/supply';

/** What a supplier put away is. */
export const putAwayTold = 'Their offers count in no list.';

/** @returns what stands beside a supplier's name in the list. */
export function supplierLine(supplier: Supplier, formatter: Formatter): string {
  const { offers, leadWorkingDays, freight, freeFreightFrom, minimumOrder } = supplier;
  return [
    offers.length === 0 ? 'no offers yet' : formatter.count(offers.length, 'offer'),
    leadWorkingDays === null ? null : formatter.count(leadWorkingDays, 'working day'),
    minimumOrder === null ? null : `least order ${formatter.money(minimumOrder)}`,
    freight === null
      ? 'freight not told'
      : freight === 0
        ? 'freight free'
        : `freight ${formatter.money(freight)}${freeFreightFrom === null ? '' : `, free from ${formatter.money(freeFreightFrom)}`}`,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}

/** @returns what stands beside an offer: its first price, its pack, its article. */
export function offerLine(offer: Supplier['offers'][number], formatter: Formatter): string {
  const [first, ...more] = offer.tiers;
  return [
    first === undefined ? null : `${formatter.smallMoney(first.each)} each`,
    ...more.map(({ from, each }) => `${formatter.smallMoney(each)} from ${formatter.number(from)}`),
    offer.packSize === 1 ? null : `packs of ${formatter.number(offer.packSize)}`,
    offer.articleNumber === '' ? null : offer.articleNumber,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}

/** What is wrong with the price steps of an offer; undefined where they rise. */
export function tierCaution(
  tiers: Supplier['offers'][number]['tiers'],
  at: number,
  formatter: Formatter,
): string | undefined {
  const [before, here] = [tiers[at - 1], tiers[at]];
  if (before === undefined || here === undefined || here.from > before.from) return undefined;
  return `The step before begins at ${formatter.number(before.from)}. Until this one begins later, the dearer price of the two is reckoned with.`;
}

export const unitChoiceWords: Readonly<Record<Consumable['unit'], string>> = {
  piece: 'pieces',
  sheet: 'sheets',
  m: 'metres',
  roll: 'rolls',
  mL: 'mL',
};

export const driverWords: Readonly<Record<Consumable['uses'][number]['per'], string>> = {
  press: 'each press',
  sheet: 'each printed sheet',
  piece: 'each finished piece',
  order: 'each order',
  session: 'each heating-up',
};

/** @returns what stands beside a consumable's name. */
export function consumableLine(
  { unit, uses, reorderAt }: Consumable,
  onHand: number | null,
  formatter: Formatter,
): string {
  const used = uses.map(({ per, amount }) => `${formatter.number(amount, 4)} ${driverWords[per]}`);
  const isLow = onHand !== null && reorderAt !== null && onHand <= reorderAt;
  return [
    used.length === 0 ? 'nobody has said what uses it' : used.join(', '),
    onHand === null ? 'not counted' : `${formatter.number(onHand)} ${unitChoiceWords[unit]} at home`,
    isLow ? 'buy it again' : null,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}

export const supplierNameTaken = (name: string): string =>
  `“${name}” is here already. With two of one name nobody could tell whose goods came: give it another name, or use that one.`;

export const consumableNameTaken = (name: string): string =>
  `“${name}” is here already. Two of one name would be counted apart: give it another name, or use that one.`;
