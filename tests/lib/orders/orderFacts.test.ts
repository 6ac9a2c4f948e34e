import { describe, expect, it } from 'vitest';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { orderFacts } from '@/lib/orders/orderFacts';
import {
  anOrder,
  anOrderLog,
  approve,
  clubArtworks,
  happenedIn,
  note,
  type OrderLog,
  pay,
  steps,
  takeBack,
  tell,
} from '@/tests/fixtures/orderLog';

const habits = { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => '2026-11-27' };
const orders = { club: anOrder({ jobIds: ['shirts'] }), choir: anOrder({ jobIds: ['mugs', 'bags'] }) };
const sorted = (log: OrderLog, before?: ReturnType<typeof orderFacts>) =>
  orderFacts(
    {
      orders,
      artworksOfJob: (jobId) =>
        jobId === 'shirts' ? clubArtworks : jobId === 'mugs' ? clubArtworks.slice(0, 1) : [],
      happened: happenedIn(log),
      habits,
    },
    before,
  );
const idsOf = (facts: ReturnType<typeof orderFacts>, orderId: string) =>
  facts.get(orderId)?.happened.map(({ id }) => id);

describe('what happened, sorted by order', () => {
  it('takes entries by order and by job, and a yes to a picture for every order that prints it', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { orderId: 'club' });
    pay(log, 1, { orderId: 'choir' });
    approve(log, 'badge', 1);
    approve(log, 'back', 1);
    const used = {
      item: { kind: 'consumable', consumableId: 'tape' },
      place: { kind: 'home' },
      grade: 'first',
      quantity: -1,
      cause: 'used',
      unitCost: null,
    } as const;
    note(log, 'stockMove', { ...used, reference: { kind: 'job', id: 'bags' } });
    note(log, 'stockMove', { ...used, reference: { kind: 'job', id: 'nobodys' } });
    note(log, 'stockMove', { ...used, reference: null });
    note(log, 'expense', {
      ...{ orderId: null, day: '2026-11-27', what: 'Rent', kind: 'other', amountMinor: 1, currency: 'USD' },
      receipt: null,
    });
    const facts = sorted(log);
    expect(idsOf(facts, 'club')).toEqual(['phone000-1', 'phone000-3', 'phone000-4']);
    expect(idsOf(facts, 'choir')).toEqual(['phone000-2', 'phone000-3', 'phone000-5']);
  });

  it('keeps the yes to a picture for an order whose steps name it, though its job prints another by now', () => {
    const log = anOrderLog();
    approve(log, 'badge', 1);
    approve(log, 'former', 1);
    approve(log, 'nobodys', 1);
    const versions = [{ artworkId: 'former', version: 1 }];
    tell(log, { ...steps.plain('pressed'), versions }, { orderId: 'choir' });
    const facts = sorted(log);
    expect(idsOf(facts, 'choir')).toEqual(['phone000-1', 'phone000-2', 'phone000-4']);
    expect(idsOf(facts, 'club')).toEqual(['phone000-1']);
  });

  it('stands in the order of everything noted, so that a clock set back counts on from what it showed for another order', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { orderId: 'choir', at: 100 });
    pay(log, 1, { orderId: 'club', at: 10 });
    tell(log, steps.plain('held'), { orderId: 'club', device: 'laptop00', at: 50 });
    expect(idsOf(sorted(log), 'club')).toEqual(['laptop00-1', 'phone000-2']);
  });

  it('moves nothing because something else is taken back: that told how late a clock was all the same', () => {
    const log = anOrderLog();
    const far = tell(log, { what: 'reminded', of: 'answer' }, { orderId: 'choir', at: 9000 });
    tell(log, steps.plain('held'), { orderId: 'club', at: 10 });
    tell(log, steps.plain('resumed'), { orderId: 'club', device: 'laptop00', at: 50 });
    expect(idsOf(sorted(log), 'club')).toEqual(['laptop00-1', 'phone000-2']);
    takeBack(log, far.id);
    expect(idsOf(sorted(log), 'club')).toEqual(['laptop00-1', 'phone000-2']);
  });

  it('stays the same object for an order of which nothing changed, and is folded once', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { orderId: 'club' });
    const first = sorted(log);
    const board = boardOrders(first.values(), '2026-11-27');
    pay(log, 1, { orderId: 'choir' });
    const second = sorted(log, first);
    expect(second.get('club')).toBe(first.get('club'));
    expect(second.get('choir')).not.toBe(first.get('choir'));
    const next = boardOrders(second.values(), '2026-11-28', board);
    const standingOf = (of: typeof board, id: string) =>
      of.find(({ facts }) => facts.orderId === id)?.standing;
    expect(standingOf(next, 'club')).toBe(standingOf(board, 'club'));
    expect(standingOf(next, 'choir')?.money.receivedMinor).toBe(1);
    // The day has moved on, and the enquiry with it.
    expect(next.find(({ facts }) => facts.orderId === 'club')?.turn.waits[0]?.lateDays).toBe(4);
  });
});
