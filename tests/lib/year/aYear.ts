import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { DayPaper } from '@/lib/stall/closeInForce';
import type { YearNoted } from '@/lib/year/yearStanding';
import type { Entry } from '@/shared/schemas/happened';
import type { Hours } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { Expense } from '@/shared/schemas/orderEvents';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';

/* A year that a test writes down entry by entry. Money in cents. */

/** Nothing is noted of it. */
export const aYear = (noted: Partial<YearNoted> = {}): YearNoted => ({
  currency: 'USD',
  payments: [],
  orderOf: () => null,
  orders: [],
  closes: [],
  plans: [],
  shopPayments: [],
  statements: [],
  channelOf: () => null,
  expenses: [],
  goodsIn: [],
  claims: [],
  hours: [],
  runSteps: [],
  standards: [],
  runs: {},
  presses: [],
  printers: [],
  pressings: [],
  sheetsPrinted: [],
  jobOf: () => null,
  dayOf: () => '2026-06-15',
  taxInside: () => null,
  overheadPerHour: null,
  wearInOverhead: false,
  stock: null,
  ...noted,
});

/** @param id such as `phone000-3`: the device and its count */
export function entry<Kind extends keyof EntryBodies>(
  kind: Kind,
  id: string,
  body: EntryBodies[Kind],
): Entry<Kind, EntryBodies[Kind]> {
  const count = Number(id.split('-').at(-1));
  return { id, kind, version: 1, device: id.split('-')[0] ?? '', count, at: 1000 + count, body };
}

const receiptOf = (file: string | null) =>
  file === null
    ? null
    : {
        ...{ fileId: file.repeat(64).slice(0, 64), fileName: `bill ${file}.pdf`, bytes: 10, mediaType: '' },
        ...{ purpose: 'receipt' as const, addedOn: '2026-06-01' },
      };

export const spent = (
  id: string,
  amountMinor: number,
  { file = null, ...more }: Partial<Expense> & { readonly file?: string | null } = {},
): Entry<'expense', Expense> =>
  entry('expense', id, {
    ...{ orderId: null, day: '2026-06-10', what: 'Rent', kind: 'rent', amountMinor, currency: 'USD' },
    receipt: receiptOf(file),
    ...more,
  });

/** Blanks of 200.00, paper of 30.00 and freight of 12.00, all on one bill. */
export const delivered = (
  id: string,
  { file = null, ...more }: Partial<GoodsIn> & { readonly file?: string | null } = {},
): Entry<'goodsIn', GoodsIn> => {
  const row = { ordered: null, counted: 1, faulty: 0, fault: null, lot: null };
  return entry('goodsIn', id, {
    ...{ day: '2026-06-12', supplierId: 'shirts-and-co', supplyOrderId: null, currency: 'USD', note: '' },
    rows: [
      { ...row, item: { kind: 'blank', blankId: 'tee', size: 'L' }, amountMinor: 20000 },
      { ...row, item: { kind: 'paper', sheetId: 'a4' }, amountMinor: 3000 },
    ],
    ...{ freightMinor: 1200, receipt: receiptOf(file) },
    ...more,
  });
};

export const worked = (id: string, minutes: number, more: Partial<Hours> = {}): Entry<'hours', Hours> =>
  entry('hours', id, {
    ...{ day: '2026-06-20', minutes, for: { kind: 'workshop' }, element: 'office', placementId: null },
    ...{ pieces: null, from: 'typed', note: '' },
    ...more,
  });

/** A fair that took 535.00 with 35.00 tax inside, kept 10.50 as fees; its tin is short by 2.00. */
export const closed = (
  id: string,
  change: Partial<DayClose> = {},
  money: Partial<DayClose['money']> = {},
): DayPaper<'dayClose', DayClose> => ({
  id,
  withdrawn: false,
  body: {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: '2026-06-14', stallDayId: 'spring-fair' },
    ...{ title: 'Spring Fair', planId: 'plan-1', soldFrom: 'taps', taps: 3, days: ['2026-06-13'] },
    ...{ currency: 'USD', goods: [], reductions: 0 },
    money: {
      ...{ gross: 53500, net: 50000, tax: 3500, cash: 13500, card: 40000, cardIs: 'tapped', cardTickets: 20 },
      ...{ ticketsAre: 'counted', fees: 1050, payoutDue: 38950, payout: null, commission: 0 },
      ...{ cashRounding: 0, float: 12000, tinMoves: 0, spent: 600, expectedCash: 25500 },
      ...{ countedCash: 25300, difference: -200, reason: null, coins: null },
      ...money,
    },
    ...{ weatherId: null, weather: null },
    result: {
      ...{ contribution: 300, fixed: 200, leftoverCost: 50, profit: 100, hours: 11, benchHours: 12 },
      payPerHour: 22.5,
    },
    ...{ sellingHours: 7, hours: [], askedFor: [], putBack: 0, decision: null, note: '' },
    ...change,
  },
});

export const fairPlans = [{ id: 'plan-1', withdrawn: false, body: fairPlan }] as const;

/** The standard of a run with one job: 300 minutes of pressing and 40 of enquiry at 4.20 overhead an hour. */
export const standardOf = (
  runId: string,
  more: Partial<RunStandard['works'][number]> = {},
): YearNoted['standards'][number] => ({
  id: `standard-${runId}`,
  withdrawn: false,
  body: {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: '2026-06-01', runId, title: 'Club', currency: 'USD' },
    ...{ cover: 'usual', sizes: [], clock: [] },
    works: [
      {
        ...{ jobId: 'job-1', orderId: 'order-1', stallDayId: null, name: 'Club', sha256: '0'.repeat(64) },
        ...{ lines: [], sheets: { sheetId: 'a4', name: 'A4', quantity: 0, tests: 0, price: 0 } },
        ink: { mL: 0, sessionMl: 0, pricePerMl: 0 },
        labour: {
          ...{ minutes: 340, wagePerHour: 18 },
          elements: [
            { element: 'presses', minutes: 300 },
            { element: 'enquiry', minutes: 40 },
          ],
        },
        ...{
          overheadPerHour: 4.2,
          reprints: 0,
          freight: 0,
          otherCost: 0,
          fullCost: 0,
          fees: 0,
          feeShare: 0,
          revenue: null,
        },
        overrides: [],
        ...more,
      },
    ],
  },
});
