import { spelledNumber } from '@/app/_words/spelledNumber';
import type { EntryCounts } from '@/lib/copies/entryCounts';

/**
 * Entries by what they are, each with its number.
 *
 * @param numberWords how a number is written
 * @example entryParts({ stockCount: 1, stockMove: 4, approval: 3 }, spelledNumber)
 *   // => ['five counts and moves of stock', 'three approvals']
 */
export function entryParts(
  counts: EntryCounts,
  numberWords: (count: number) => string = spelledNumber,
): readonly string[] {
  const told = families.flatMap(({ kinds, together }) => {
    const present = kinds.filter(({ of }) => countOf(counts, of) > 0);
    const count = countOf(
      counts,
      kinds.flatMap(({ of }) => of),
    );
    const [only, ...others] = present;
    if (only === undefined) return [];
    const words = others.length > 0 ? together : count === 1 ? only.one : only.many;
    return [`${numberWords(count)} ${words}`];
  });
  const known = families.flatMap(({ kinds }) => kinds.flatMap(({ of }) => of));
  const rest = countOf(
    counts,
    Object.keys(counts).filter((kind) => !known.includes(kind)),
  );
  return rest === 0
    ? told
    : [...told, `${numberWords(rest)} ${rest === 1 ? 'other entry' : 'other entries'}`];
}

/** @returns the same in one clause: “two papers that went out, one ink refill and three approvals”. */
export const entryWords = (counts: EntryCounts): string =>
  entryParts(counts)
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');

// Helpers

interface Family {
  readonly kinds: readonly { readonly of: readonly string[]; readonly one: string; readonly many: string }[];
  /** Where there are several of its kinds. */
  readonly together: string;
}

const families: readonly Family[] = [
  // A paper counts by the entry that issued it.
  { kinds: [{ of: ['issuing'], one: 'paper that went out', many: 'papers that went out' }], together: '' },
  { kinds: [{ of: ['stallPlan'], one: 'fixed plan', many: 'fixed plans' }], together: '' },
  { kinds: [{ of: ['dayClose'], one: 'closed stall day', many: 'closed stall days' }], together: '' },
  { kinds: [{ of: ['runStandard'], one: 'run as it began', many: 'runs as they began' }], together: '' },
  {
    kinds: [
      { of: ['stockCount'], one: 'count of stock', many: 'counts of stock' },
      { of: ['stockMove', 'stockTransfer'], one: 'move of stock', many: 'moves of stock' },
    ],
    together: 'counts and moves of stock',
  },
  {
    kinds: [
      { of: ['inkRefill'], one: 'ink refill', many: 'ink refills' },
      { of: ['inkPrints'], one: 'noted print', many: 'noted prints' },
    ],
    together: 'ink refills and noted prints',
  },
  {
    kinds: [{ of: ['orderEvent'], one: 'step of an order', many: 'steps of orders' }],
    together: '',
  },
  {
    kinds: [
      { of: ['payment'], one: 'payment', many: 'payments' },
      { of: ['payout'], one: 'payout', many: 'payouts' },
      { of: ['expense'], one: 'expense', many: 'expenses' },
    ],
    together: 'payments, payouts and expenses',
  },
  {
    kinds: [{ of: ['stallTap'], one: 'tap of a sales count', many: 'taps of a sales count' }],
    together: '',
  },
  {
    kinds: [{ of: ['shopPrice'], one: 'price agreed with a shop', many: 'prices agreed with shops' }],
    together: '',
  },
  {
    kinds: [
      { of: ['shopStatement'], one: 'statement of a shop', many: 'statements of shops' },
      { of: ['shopPayment'], one: 'payment of a shop', many: 'payments of shops' },
    ],
    together: 'statements and payments of shops',
  },
  {
    kinds: [
      { of: ['pressing'], one: 'pressed piece', many: 'pressed pieces' },
      { of: ['sheetsPrinted'], one: 'note of printed sheets', many: 'notes of printed sheets' },
      { of: ['blankFault'], one: 'faulty blank', many: 'faulty blanks' },
      { of: ['runActual', 'runStep'], one: 'note of a run', many: 'notes of runs' },
    ],
    together: 'notes of runs',
  },
  { kinds: [{ of: ['hours'], one: 'note of hours', many: 'notes of hours' }], together: '' },
  {
    kinds: [
      { of: ['pressTest'], one: 'test press', many: 'test presses' },
      { of: ['washCheck'], one: 'wash check', many: 'wash checks' },
    ],
    together: 'test presses and wash checks',
  },
  {
    kinds: [
      { of: ['goodsIn'], one: 'delivery of goods', many: 'deliveries of goods' },
      { of: ['faultClaim'], one: 'step of a claim', many: 'steps of claims' },
    ],
    together: 'deliveries and claims',
  },
  {
    kinds: [{ of: ['rateTaken'], one: 'measured figure', many: 'measured figures' }],
    together: '',
  },
  {
    kinds: [{ of: ['approval'], one: 'approval of a picture', many: 'approvals of pictures' }],
    together: '',
  },
];

const countOf = (counts: EntryCounts, kinds: readonly string[]): number =>
  kinds.reduce((sum, kind) => sum + (counts[kind] ?? 0), 0);
