import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { DeliveryStanding, WrongRow } from '@/lib/buying/received/claims';
import type { Consumable } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { GoodsFault } from '@/shared/tables/faults';
import { unitOf } from './itemWords';

/** What can be wrong with goods as they come. */
export const goodsFaultWords: Readonly<Record<GoodsFault, string>> = {
  hole: 'a hole',
  stain: 'a stain',
  coating: 'the coating',
  seam: 'a seam',
  label: 'the label',
  wrongSize: 'another size than said',
  wrongColour: 'another colour than said',
  other: 'something else',
};

type Row = GoodsIn['rows'][number];

/** @returns what is to be seen of a row at a glance: faulty, more or fewer than ordered; nothing where all is well. */
export function rowMarks(
  { ordered, counted, faulty, fault }: Row,
  answersOrder: boolean,
  formatter: Formatter,
): readonly string[] {
  const number = (count: number) => formatter.number(count, 2);
  const less = (ordered ?? 0) - counted;
  return [
    ...(faulty > 0 ? [`${number(faulty)} faulty${fault === null ? '' : `: ${goodsFaultWords[fault]}`}`] : []),
    ...(ordered === null && answersOrder && counted > 0 ? ['not ordered'] : []),
    ...(ordered !== null && less > 0 ? [`${number(less)} fewer than ordered`] : []),
    ...(ordered !== null && less < 0 ? [`${number(-less)} more than ordered`] : []),
  ];
}

/** @returns what a delivery cost, in words. */
export function deliveryCost(
  { rows, currency, freightMinor }: Pick<GoodsIn, 'rows' | 'currency' | 'freightMinor'>,
  locale: string,
): string {
  const known = rows.filter((row) => row.amountMinor !== null);
  const unbilled = rows.length - known.length;
  const goods = known.reduce((sum, row) => sum + (row.amountMinor ?? 0), 0);
  const told =
    known.length === 0
      ? 'no bill yet'
      : `${minorMoney(goods, currency, locale)}${unbilled > 0 ? ` for ${known.length} of ${rows.length} things; nobody noted what the ${unbilled === 1 ? 'other' : `other ${unbilled}`} cost` : ''}`;
  return freightMinor === null ? told : `${told}, freight ${minorMoney(freightMinor, currency, locale)}`;
}

/** Of an order that several deliveries answer: of some things more came than it asks for. */
export const beyondWords = {
  line: 'more in all than ordered',
  told: (name: string, came: string, ordered: string): string =>
    `In all ${came} usable of ${name} came for an order of ${ordered}. If one delivery was noted twice, stock holds too many: take one of them back out.`,
} as const;

/** Sentences of the form that says what is missing. */
export const deliveryMissing = {
  rows: 'What came comes first: count a row, or add one.',
  faultyBeyond: (name: string) =>
    `More of ${name} are faulty than came. Then fewer than none would be usable: count again.`,
  faultUnsaid: (name: string) => `First say what is wrong with ${name}.`,
} as const;

/** Over the columns of what came. */
export const goodsHeads = {
  what: 'What',
  ordered: 'Ordered',
  came: 'Counted',
  cost: 'All counted cost',
} as const;

/** @example '12 pieces at 4.83 USD'; what nobody ordered has its unit alone. */
export function orderedWords(
  ordered: number | null,
  unit: Consumable['unit'],
  each: string | null,
  formatter: Formatter,
): string {
  const many =
    ordered === null ? unitOf(unit, 2) : `${formatter.number(ordered, 2)} ${unitOf(unit, ordered)}`;
  return each === null ? many : `${many} at ${each}`;
}

/** @returns what is typed in the part of a row that is folded away; empty where nothing is. */
export const foldedWords = (
  { faulty, lot }: { readonly faulty: number | null; readonly lot: string },
  formatter: Formatter,
): string =>
  [
    (faulty ?? 0) > 0 ? `${formatter.number(faulty ?? 0, 2)} faulty` : null,
    lot.trim() === '' ? null : `lot ${lot.trim()}`,
  ]
    .filter((part) => part !== null)
    .join(', ');

/** Pressing it says that the bill asks what was ordered or offered. */
export const pricesAct = (isCounting: boolean, isOrdered: boolean): string =>
  `${isCounting ? 'All others as ordered, at' : 'All others at'} the prices ${isOrdered ? 'ordered' : 'offered'}`;

export const unitPriceTold = (each: string): string => `That is ${each} each.`;

/** @returns how far a claim is. */
export function claimStateWords({ state, wrong, refunded }: DeliveryStanding, locale: string): string {
  switch (state) {
    case 'none':
      return wrong.some(({ faulty }) => faulty > 0)
        ? 'faulty goods not claimed yet'
        : 'fewer came than were ordered';
    case 'claimed':
      return 'claimed, not answered yet';
    case 'refunded':
      return `refunded: ${refunded.map(({ minor, currency }) => minorMoney(minor, currency, locale)).join(' and ')}`;
    case 'replaced':
      return 'replaced';
    case 'refused':
      return 'refused';
    default:
      return state satisfies never;
  }
}

interface ClaimFacts {
  readonly wrong: readonly (WrongRow & {
    readonly name: string;
    readonly counted: number;
    readonly articleNumber: string;
  })[];
  /** Of the delivery, as words. */
  readonly day: string;
  readonly orderNumber: string | null;
  readonly customerNumber: string;
  readonly from: string;
  /** Of the bill. */
  readonly currency: string;
}

/** @returns what is sent to the supplier: only what came wrong, and what is asked. */
export function claimText(
  { wrong, day, orderNumber, customerNumber, from, currency }: ClaimFacts,
  formatter: Formatter,
  locale: string,
): string {
  const number = (count: number) => formatter.number(count, 2);
  const money = (minor: number) => minorMoney(minor, currency, locale);
  const about = [
    `Delivery of ${day}`,
    orderNumber === null ? null : `our order ${orderNumber}`,
    customerNumber === '' ? null : `our customer number ${customerNumber}`,
  ].filter((part) => part !== null);
  const rows = wrong.flatMap(({ name, counted, faulty, faultyMinor, faults, missing, articleNumber }) => {
    const called = articleNumber === '' ? name : `${name} (article ${articleNumber})`;
    const why = faults.length === 0 ? '' : `: ${faults.map((fault) => goodsFaultWords[fault]).join(', ')}`;
    return [
      ...(faulty > 0
        ? [
            `${number(faulty)} of ${number(counted)} ${called} came faulty${why}${faultyMinor === null ? '' : `, billed at ${money(faultyMinor)}`}.`,
          ]
        : []),
      ...(missing > 0 ? [`${number(missing)} ${called} did not come.`] : []),
    ];
  });
  return [
    `${about.join(', ')}.`,
    '',
    ...rows,
    ...sumOf(wrong, money),
    '',
    'Please replace them, or credit what they cost. Tell us whether you want the faulty ones back.',
    '',
    from,
  ].join('\n');
}

/** @returns what all faulty ones were billed at; nothing where that is known of one thing alone, or not of all */
function sumOf(wrong: ClaimFacts['wrong'], money: (minor: number) => string): readonly string[] {
  const faulty = wrong.filter((row) => row.faulty > 0);
  if (faulty.length < 2 || faulty.some(({ faultyMinor }) => faultyMinor === null)) return [];
  return [`Together ${money(faulty.reduce((sum, row) => sum + (row.faultyMinor ?? 0), 0))}.`];
}

/** @example 'Club shirt, M: paid 4.95 USD, reckoned with 4.83 USD' */
export function paidWords(name: string, paid: string, before: string | null): string {
  return before === null
    ? `${name}: paid ${paid}, no price known before`
    : `${name}: paid ${paid}, reckoned with ${before}`;
}

/** @returns where a price would be set, in words. */
export function paidPlacesWords(
  places: readonly { readonly kind: 'job' | 'blank' | 'workshop' | 'stallDay' | 'supplier' }[],
): string {
  const words = {
    blank: 'the blank',
    workshop: 'the paper',
    supplier: 'the supplier’s offer',
    job: 'the job',
    stallDay: 'the stall day',
  };
  return `Sets it at ${[...new Set(places.map(({ kind }) => words[kind]))].join(' and ')}.`;
}

/** @returns what is still open with suppliers, in one line. */
export function openCount(orders: number, claims: number): string {
  const parts = [
    ...(orders > 0 ? [`${orders} ${orders === 1 ? 'order' : 'orders'} to come`] : []),
    ...(claims > 0 ? [`${claims} ${claims === 1 ? 'claim' : 'claims'} open`] : []),
  ];
  return parts.length === 0 ? 'Nothing is on its way, nothing is claimed.' : `${parts.join(', ')}.`;
}
