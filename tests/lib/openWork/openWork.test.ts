import { describe, expect, it } from 'vitest';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { runFacts, type StandardPaper } from '@/lib/making/runFacts';
import { neededBefore } from '@/lib/openWork/neededBefore';
import { openNeeds } from '@/lib/openWork/openNeeds';
import { type OpenWork, openWork } from '@/lib/openWork/openWork';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { orderFacts } from '@/lib/orders/orderFacts';
import type { StockNeed } from '@/lib/stock/reserved';
import { runSchema } from '@/shared/schemas/making/run';
import { buyingListSchema, consumableSchema } from '@/shared/schemas/making/supply';
import type { Order } from '@/shared/schemas/order';
import { club, TODAY } from '@/tests/fixtures/clubJob';
import { ownBlock } from '@/tests/fixtures/clubRun';
import { clubStandard } from '@/tests/fixtures/clubStandard';
import { grid } from '@/tests/fixtures/costed';
import { anOrder, anOrderLog, happenedIn, quoteOut, steps, tell } from '@/tests/fixtures/orderLog';

/** Orders that were accepted, by their ids, and others that were not. */
function boardOf(orders: Readonly<Record<string, Partial<Order>>>, accepted = Object.keys(orders)) {
  const log = anOrderLog();
  for (const orderId of accepted) {
    const quote = quoteOut(log, {}, { orderId });
    tell(log, steps.accepted(quote.id), { orderId });
  }
  const facts = orderFacts({
    orders: Object.fromEntries(Object.entries(orders).map(([id, change]) => [id, anOrder(change)])),
    artworksOfJob: () => [],
    happened: happenedIn(log),
    habits: { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => TODAY },
  });
  return boardOrders(facts.values(), TODAY);
}

const standardPaper = (runId: string): StandardPaper => ({
  ...{ id: 'standard', device: 'a', at: 1, withdrawn: false },
  body: { ...clubStandard(), runId },
});

function found(
  orders: Parameters<typeof boardOf>[0],
  more: {
    readonly accepted?: readonly string[];
    readonly runs?: Readonly<Record<string, Parameters<typeof runSchema.parse>[0]>>;
    readonly standards?: readonly StandardPaper[];
    readonly list?: Parameters<typeof buyingListSchema.parse>[0];
    readonly isOrdered?: boolean;
  } = {},
): readonly OpenWork[] {
  const runs = Object.entries(more.runs ?? {}).map(([id, run]) =>
    runFacts(id, runSchema.parse(run), [], more.standards ?? []),
  );
  return openWork({
    board: boardOf(orders, more.accepted === undefined ? undefined : [...more.accepted]),
    runs,
    lists: more.list === undefined ? [] : [{ id: 'list', list: buyingListSchema.parse(more.list) }],
    orderedLists: new Set(more.isOrdered === true ? ['list'] : []),
    latestOf: (id) => (id === 'club' ? '2026-12-09' : null),
  });
}
const told = (some: readonly OpenWork[]) =>
  some.map(({ by, works, place }) => [by.id, works.map(({ jobId }) => jobId).join(' '), place]);

describe('work that is going to be done', () => {
  const club = { jobIds: ['shirts', 'mugs'], wantedOn: '2026-12-14' };

  it('is what was accepted, each job once where a run makes it for the order', () => {
    const run = { name: 'Monday', works: [{ jobId: 'shirts', orderId: 'club' }] };
    expect(told(found({ club, other: { jobIds: ['caps'] } }, { accepted: ['club'] }))).toEqual([
      ['club', 'shirts mugs', 1],
    ]);
    expect(told(found({ club }, { runs: { run } }))).toEqual([
      ['run', 'shirts', 2],
      ['club', 'mugs', 1],
    ]);
    // The same job for nobody, or for somebody else, is another work.
    const forNobody = { name: 'Stock', works: [{ jobId: 'shirts', orderId: null }] };
    expect(told(found({ club }, { runs: { forNobody } }))).toEqual([
      ['forNobody', 'shirts', 2],
      ['club', 'shirts mugs', 1],
    ]);
    // A run that was put away makes nothing.
    expect(told(found({ club }, { runs: { run: { ...run, archivedOn: TODAY } } }))).toEqual([
      ['club', 'shirts mugs', 1],
    ]);
  });

  it('takes by the day it is wanted, and what has begun or was bought for before all of that', () => {
    const late = { jobIds: ['caps'], wantedOn: '2026-12-21' };
    const runs = { run: { name: 'Begun', works: [{ jobId: 'bags', orderId: null }] } };
    expect(told(found({ late, club }, { runs, standards: [standardPaper('run')] }))).toEqual([
      ['run', 'bags', 0],
      ['late', 'caps', 2],
      ['club', 'shirts mugs', 1],
    ]);
    // Of one day by id, whichever order they came in.
    const twin = { jobIds: ['mugs'], wantedOn: '2026-12-14' };
    for (const orders of [
      { club, aTwin: twin },
      { aTwin: twin, club },
    ])
      expect(new Map(found(orders).map(({ by, place }) => [by.id, place]))).toEqual(
        new Map([
          ['aTwin', 1],
          ['club', 2],
        ]),
      );
    const list = { name: 'List', cover: 'sure', works: [{ jobId: 'caps', orderId: 'late' }] };
    expect(found({ late, club }, { list }).map(({ cover, place }) => [cover, place])).toEqual([
      ['sure', 2],
      ['usual', 1],
    ]);
    expect(told(found({ late, club }, { list, isOrdered: true }))).toEqual([
      ['late', 'caps', 0],
      ['club', 'shirts mugs', 1],
    ]);
  });
});

describe('what it is going to use', () => {
  const tape = consumableSchema.parse({
    name: 'Tape',
    unit: 'm',
    uses: [{ id: 'tape', per: 'piece', amount: 2 }],
  });
  const asked = (open: OpenWork, input = club()) =>
    openNeeds(
      {
        today: TODAY,
        bench: { blocks: [...usualBlocks], daysOff: [] },
        consumables: [{ id: 'tape', consumable: tape }],
        open: [{ ...open, inputs: open.works.map(() => input) }],
      },
      grid,
    );
  const work = { jobId: 'club', orderId: null };
  const planned = (fields: object = {}): OpenWork => ({
    ...{ by: { kind: 'run', id: 'run' }, works: [work], cover: 'usual', place: 1, standard: null, day: null },
    run: runSchema.parse({ name: 'Run', works: [work], ...fields }),
  });
  const blanksOf = (needs: readonly StockNeed[]) =>
    needs.flatMap(({ item, quantity }) => (item.kind === 'blank' ? [[item.size, quantity]] : []));

  it('is blanks at its cover, sheets, ink by channel and consumables, on the day of its clock', () => {
    // The worked example: 45 blanks come out whole three times in four; 37 pieces take 2 m of tape each.
    const { needs, pressOn } = asked(planned({ ownBlocks: [ownBlock('2026-12-05')] }));
    expect(blanksOf(needs)).toEqual([
      ['S', 5],
      ['M', 11],
      ['L', 13],
      ['XL', 10],
      ['2XL', 5],
      ['3XL', 1],
    ]);
    expect(needs.flatMap(({ item, quantity }) => (item.kind === 'consumable' ? [quantity] : []))).toEqual([
      74,
    ]);
    expect(needs.flatMap(({ item }) => (item.kind === 'ink' ? [item.name] : []))).toEqual(
      expect.arrayContaining(['Cyan', 'Magenta', 'Yellow']),
    );
    expect(needs.filter(({ item }) => item.kind === 'paper')).toHaveLength(1);
    expect(new Set(needs.map(({ day }) => day))).toEqual(new Set(['2026-12-05']));
    expect(pressOn).toEqual([{ ...work, day: '2026-12-05' }]);
  });

  it('is what was laid out once it has begun, and no day to order by any more', () => {
    const standard = { ...clubStandard(), runId: 'run' };
    const { needs, pressOn } = asked({ ...planned(), standard, place: 0 });
    expect(blanksOf(needs)).toEqual(standard.works[0]?.lines[0]?.sizes.map(({ size, take }) => [size, take]));
    expect(needs.filter(({ item }) => item.kind === 'paper')).toHaveLength(1);
    expect(needs.some(({ item }) => item.kind === 'ink')).toBe(true);
    expect(pressOn).toEqual([]);
  });

  it('of a job that is not here, or has no sums, is in nothing', () => {
    const open = { ...planned(), inputs: [null] };
    const gone = { today: TODAY, bench: { blocks: [], daysOff: [] }, consumables: [], open: [open] };
    expect(openNeeds(gone, grid)).toEqual({ needs: [], pressOn: [] });
  });
});

describe('what is kept from a list', () => {
  const need = (jobId: string, place: number, quantity = 10): StockNeed => ({
    item: { kind: 'paper', sheetId: 'letter' },
    ...{ quantity, jobId, orderId: null, by: { kind: 'run', id: jobId }, day: null, place },
  });
  const needs = [need('begun', 0, 1), need('first', 1, 2), need('second', 2, 4)];
  const keptFrom = (...jobs: readonly string[]) =>
    neededBefore(
      needs,
      jobs.map((jobId) => ({ jobId, orderId: null })),
    ).reduce((sum, { quantity }) => sum + quantity, 0);

  it('is what others take before it, never its own, so that two lists do not both buy what lies here', () => {
    expect(keptFrom('first')).toBe(1);
    expect(keptFrom('second')).toBe(3);
    expect(keptFrom('second', 'begun')).toBe(0);
    // What nobody planned comes last.
    expect(keptFrom('stranger')).toBe(7);
  });
});
