import { previewNames } from '@/lib/names/previewNames';
import { readNames } from '@/lib/names/readNames';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { type ArtworkVersion, orderFacts } from '@/lib/orders/orderFacts';
import type { Quote } from '@/shared/schemas/orderPapers';
import {
  anOrder,
  anOrderLog,
  clubArtworks,
  happenedIn,
  type OrderLog,
  pay,
  quoteOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';
import { clubQuote, writtenPaper } from '@/tests/fixtures/orderPapers';
import { type BenchRow, cpuRow } from './benchRow';
import { cpuTimes } from './measure';

const ORDERS = 300;
const ENTRIES = 5000;
const SIZES = ['S', 'M', 'L', 'XL', '2XL', '3XL'];

/** What a year of orders, a long quote and a large club cost. Time of the processor: no other program slows it. */
export async function benchOrders(): Promise<readonly BenchRow[]> {
  const log = yearOfOrders();
  const orders = Object.fromEntries(
    Array.from({ length: ORDERS }, (_, at) => [orderId(at), anOrder({ jobIds: [`job-${at}`] })]),
  );
  const artworksOfJob = (): readonly ArtworkVersion[] => clubArtworks;
  const habits = { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => TODAY };
  const asked = { orders, artworksOfJob, habits, happened: happenedIn(log) };
  const facts = orderFacts(asked);
  const board = boardOrders(facts.values(), TODAY);
  const more: OrderLog = { ...log, noted: [...log.noted] };
  pay(more, 100, { orderId: orderId(7) });
  const after = happenedIn(more);
  const names = Array.from({ length: 500 }, (_, at) => `Person ${at},${SIZES[at % SIZES.length]},${at}`);
  const pasted = ['Name,Size,Number', ...names].join('\n');
  const long: Quote = { ...clubQuote, goods: goodsOf(200), charges: [] };
  return [
    cpuRow(
      `board of ${ORDERS} orders folded from ${ENTRIES.toLocaleString('en')} entries`,
      await cpuTimes(20, () => boardOrders(orderFacts(asked).values(), TODAY)),
    ),
    cpuRow(
      'the same board after one more payment',
      await cpuTimes(20, () =>
        boardOrders(orderFacts({ ...asked, happened: after }, facts).values(), TODAY, board),
      ),
    ),
    cpuRow(
      'quote of 200 lines written as a PDF',
      await cpuTimes(10, () => writtenPaper({ kind: 'quote', body: long })),
    ),
    cpuRow(
      '500 pasted names read and looked through',
      await cpuTimes(40, () => previewNames(readNames(pasted, SIZES), SIZES)),
    ),
  ];
}

const TODAY = '2026-11-27';
const orderId = (at: number): string => `order-${at + 1}`;

/** Orders that got as far as their number says, each with as many entries as it takes to have all. */
function yearOfOrders(): OrderLog {
  const log = anOrderLog();
  for (let at = 0; at < ORDERS; at += 1) {
    const told = { orderId: orderId(at) };
    const many = Math.floor(((at + 1) * ENTRIES) / ORDERS) - Math.floor((at * ENTRIES) / ORDERS);
    tell(log, { what: 'enquired', number: { year: 2026, count: at + 1, letter: 'A' } }, told);
    const quote = quoteOut(log, {}, told);
    tell(log, steps.quoted(quote.id), told);
    tell(log, steps.accepted(quote.id), told);
    tell(log, steps.approved(), told);
    for (let paid = 4; paid < many; paid += 1) pay(log, 4000 + paid, told);
  }
  if (log.noted.length !== ENTRIES) throw new Error(`the bench means ${ENTRIES} entries`);
  return log;
}

/** So many rows, each of a price of its own, 50 of one kind of goods. */
const goodsOf = (rows: number): Quote['goods'] =>
  Array.from({ length: rows / 50 }, (_, kind) => ({
    jobId: 'job',
    lineId: `line-${kind}`,
    name: `Kind ${kind + 1}`,
    says: '',
    shape: 'other',
    prints: [],
    sizes: Array.from({ length: 50 }, (__, at) => {
      const each = 100 + kind * 50 + at;
      return { size: `Row ${each}`, quantity: 1, each, total: each };
    }),
    start: 0,
  }));
