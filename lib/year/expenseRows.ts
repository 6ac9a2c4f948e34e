import { billedEach } from '@/lib/stock/billedEach';
import { sameItem } from '@/lib/stock/stockKey';
import { grouped } from '@/shared/grouped';
import type { Entry } from '@/shared/schemas/happened';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { FaultClaim, GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { Expense } from '@/shared/schemas/orderEvents';
import { splitWhole } from '@/shared/splitWhole';
import { leftOutBy, type RowAbout, type YearRow } from './yearRow';

/** What says that money went out. */
export interface SpendingNoted {
  readonly currency: string;
  readonly expenses: readonly Entry<'expense', Expense>[];
  readonly goodsIn: readonly Entry<'goodsIn', GoodsIn>[];
  readonly claims: readonly Entry<'faultClaim', FaultClaim>[];
}

type ExpenseRow = Extract<YearRow, { readonly flow: 'expense' }>;

/**
 * What went out, of all years, each bill once: where an expense was noted with the receipt of a delivery, the expense
 * says what was paid, and what the delivery says of money is told and left out. Several expenses of one receipt all
 * count, for a bill may hold several things, and so do several deliveries of one bill. An expense that is in no sum, for it
 * is in another currency, leaves no delivery out: then the delivery counts, and the expense is told as its.
 */
export function expenseRows(noted: SpendingNoted): readonly YearRow[] {
  const { currency: own } = noted;
  const payers = payersOf(noted.expenses, own);
  const tellers = tellersOf(noted.goodsIn, own);
  return [
    ...noted.expenses.map((entry) => expenseRow(entry, own, tellers)),
    ...noted.goodsIn.flatMap((entry) => goodsRows(entry, own, payers)),
    ...noted.claims.flatMap((entry) => refundRows(entry, noted)),
  ];
}

/** Two rows that may be the same bill noted twice. */
export interface DoubtfulPair {
  readonly first: YearRow;
  readonly second: YearRow;
}

/**
 * Expenses that look as if one bill was noted twice: of the same day, amount and currency, and of the same kind where both
 * are expenses. All count all the same; only the maker knows.
 */
export function doubtfulPairs(rows: readonly YearRow[], noted: SpendingNoted): readonly DoubtfulPair[] {
  const deliveries = new Map(noted.goodsIn.map(({ id, body }) => [id, -billedMinor(body)]));
  const counted = rows.filter(
    (row): row is ExpenseRow => row.flow === 'expense' && row.leftOut === null && row.amountMinor < 0,
  );
  // A row of each entry or paper.
  const bills = [...new Map(counted.map((row) => [row.id, row])).values()];
  const whole = (row: YearRow) => deliveries.get(row.id) ?? row.amountMinor;
  const alike = grouped(bills, (row) => `${row.day} ${whole(row)}`);
  return [...alike.values()].flatMap((some) =>
    some.flatMap((first, at) =>
      some
        .slice(at + 1)
        .flatMap((second) => (isSameBill(first, second, deliveries) ? [{ first, second }] : [])),
    ),
  );
}

// Helpers

function isSameBill(first: ExpenseRow, second: ExpenseRow, deliveries: ReadonlyMap<string, number>): boolean {
  const isMixed = deliveries.has(first.id) !== deliveries.has(second.id);
  if (isMixed) return true;
  return first.kind === second.kind && first.what === second.what && isSameAbout(first.about, second.about);
}

const isSameAbout = (one: RowAbout, other: RowAbout): boolean =>
  one.kind === other.kind && ('id' in one ? one.id : '') === ('id' in other ? other.id : '');

const billedMinor = ({ rows, freightMinor }: GoodsIn): number =>
  rows.reduce((sum, { amountMinor }) => sum + (amountMinor ?? 0), freightMinor ?? 0);

interface Payer {
  readonly id: string;
  readonly isCounted: boolean;
}

/** The first expense of each receipt, by the file it names; one that counts before others. */
function payersOf(expenses: SpendingNoted['expenses'], own: string): ReadonlyMap<string, Payer> {
  const payers = new Map<string, Payer>();
  for (const { id, body } of expenses) {
    if (body.receipt === null) continue;
    const { fileId } = body.receipt;
    const isCounted = body.currency === own;
    const known = payers.get(fileId);
    if (known === undefined || (isCounted && !known.isCounted)) payers.set(fileId, { id, isCounted });
  }
  return payers;
}

/** The first delivery of each receipt that says an amount in the currency of the sums. */
function tellersOf(goodsIn: SpendingNoted['goodsIn'], own: string): ReadonlyMap<string, string> {
  const tellers = new Map<string, string>();
  for (const { id, body } of goodsIn) {
    const { receipt, currency } = body;
    if (receipt === null || currency !== own || tellers.has(receipt.fileId) || billedMinor(body) === 0)
      continue;
    tellers.set(receipt.fileId, id);
  }
  return tellers;
}

function expenseRow(
  { id, body }: Entry<'expense', Expense>,
  own: string,
  tellers: ReadonlyMap<string, string>,
): YearRow {
  const { orderId, day, what, kind, amountMinor, currency, receipt } = body;
  const about: RowAbout = orderId === null ? { kind: 'workshop' } : { kind: 'order', id: orderId };
  const teller = receipt === null ? undefined : tellers.get(receipt.fileId);
  // Written out in one, here and below: of rows by the ten thousand, each sum would take thrice as long.
  return {
    id,
    day,
    about,
    what,
    way: null,
    amountMinor: -amountMinor,
    currency,
    receipt: receipt?.fileName ?? null,
    leftOut:
      currency === own || teller === undefined
        ? leftOutBy(currency, own)
        : { why: 'deliverySays', entryId: teller },
    flow: 'expense',
    kind,
  };
}

/** A row for each kind of goods, and one for freight. */
function goodsRows(
  { id, body }: Entry<'goodsIn', GoodsIn>,
  own: string,
  payers: ReadonlyMap<string, Payer>,
): readonly YearRow[] {
  const { day, supplierId, currency, receipt, rows, freightMinor, note } = body;
  const named = receipt === null ? undefined : payers.get(receipt.fileId);
  // Of two in other currencies the expense is told, and of two of which one counts that one.
  const payer = named?.isCounted || currency !== own ? named?.id : undefined;
  const amounts = new Map<Expense['kind'], number>();
  const add = (kind: Expense['kind'], minor: number | null) => {
    if (minor !== null && minor !== 0) amounts.set(kind, (amounts.get(kind) ?? 0) + minor);
  };
  for (const { item, amountMinor } of rows) add(kindsOfGoods[item.kind], amountMinor);
  add('freight', freightMinor);
  const about = aboutSupplier(supplierId);
  const file = receipt?.fileName ?? null;
  return Array.from(
    amounts,
    ([kind, minor]): YearRow => ({
      id,
      day,
      about,
      what: note,
      way: null,
      amountMinor: -minor,
      currency,
      receipt: file,
      leftOut: payer === undefined ? leftOutBy(currency, own) : { why: 'paidBy', entryId: payer },
      flow: 'expense',
      kind,
    }),
  );
}

/** A row for each kind of goods that were claimed: a refund is less spent on them. */
function refundRows(
  { id, body, at }: SpendingNoted['claims'][number],
  { goodsIn, claims, currency: own }: SpendingNoted,
): readonly YearRow[] {
  const { step, day, goodsInId } = body;
  if (step.what !== 'refunded') return [];
  const delivery = goodsIn.find((one) => one.id === goodsInId)?.body;
  const told = claims.filter((one) => one.body.goodsInId === goodsInId && one.at <= at);
  const shares = claimedKinds(
    delivery,
    told.map((one) => one.body.step),
  );
  const all = shares.reduce((sum, [, weight]) => sum + weight, 0);
  const parts = splitWhole(
    step.amountMinor,
    shares.map(([, weight]) => (step.amountMinor * weight) / all),
  );
  return shares.map(
    ([kind], index): YearRow => ({
      ...{ id, day, about: aboutSupplier(delivery?.supplierId ?? null), what: step.note, way: null },
      ...{ amountMinor: parts[index] ?? 0, currency: step.currency, flow: 'expense', receipt: null },
      ...{ kind, leftOut: leftOutBy(step.currency, own) },
    }),
  );
}

/**
 * Kinds of the goods that came back, each with what of the bill it was: those claimed last, else those counted as faulty,
 * else all. Where no bill says a price they weigh by pieces; without a delivery they are taken for blanks.
 */
function claimedKinds(
  delivery: GoodsIn | undefined,
  steps: readonly FaultClaim['step'][],
): readonly (readonly [kind: Expense['kind'], weight: number])[] {
  const rows = delivery?.rows ?? [];
  const claimed = steps.findLast((step) => step.what === 'claimed')?.rows ?? [];
  const faulty = rows.filter((row) => row.faulty > 0).map(({ item, faulty: pieces }) => ({ item, pieces }));
  const all = rows.map(({ item, counted: pieces }) => ({ item, pieces }));
  const meant = [claimed, faulty, all].find((some) => some.some(({ pieces }) => pieces > 0)) ?? [];
  const weigh = (each: (item: SupplyItem) => number) => {
    const kinds = new Map<Expense['kind'], number>();
    for (const { item, pieces } of meant) {
      const weight = pieces * each(item);
      if (weight > 0) kinds.set(kindsOfGoods[item.kind], (kinds.get(kindsOfGoods[item.kind]) ?? 0) + weight);
    }
    return [...kinds];
  };
  const billed = delivery === undefined ? [] : billedEach(delivery);
  const byBill = weigh((item) => billed.find((one) => sameItem(one.item, item))?.eachMinor ?? 0);
  const found = byBill.length > 0 ? byBill : weigh(() => 1);
  return found.length > 0 ? found : [['blanks', 1]];
}

const aboutSupplier = (id: string | null): RowAbout =>
  id === null ? { kind: 'workshop' } : { kind: 'supplier', id };

const kindsOfGoods: Readonly<Record<SupplyItem['kind'], Expense['kind']>> = {
  blank: 'blanks',
  paper: 'paper',
  ink: 'ink',
  // As receipts of orders have it.
  consumable: 'packaging',
};
