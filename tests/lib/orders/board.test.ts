import { describe, expect, it } from 'vitest';
import { hitRates } from '@/lib/orders/board/hitRates';
import { boardOrders, orderSearchText, shownOrders } from '@/lib/orders/board/orderBoard';
import { purses } from '@/lib/orders/board/purse';
import { type BoardOrder, lastPrintOn, todayList } from '@/lib/orders/board/todayList';
import { orderFacts } from '@/lib/orders/orderFacts';
import type { Order } from '@/shared/schemas/order';
import {
  anOrder,
  anOrderLog,
  approve,
  clubArtworks,
  happenedIn,
  invoiceOut,
  type OrderLog,
  pay,
  proofOut,
  quoteOut,
  requestOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

const TODAY = '2026-11-26';

/** All orders of a log by their ids, each with a job of its own. */
const boardOf = (
  log: OrderLog,
  orders: Readonly<Record<string, Partial<Order>>> = { 'order-1': {} },
  today = TODAY,
  artworks = clubArtworks,
) => {
  const bodies = Object.fromEntries(
    Object.entries(orders).map(([id, change]) => [id, anOrder({ jobIds: [`job of ${id}`], ...change })]),
  );
  const facts = orderFacts({
    orders: bodies,
    artworksOfJob: () => artworks,
    happened: happenedIn(log),
    habits: { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => today },
  });
  return boardOrders(facts.values(), today);
};
const only = (
  log: OrderLog,
  order: Partial<Order> = {},
  today = TODAY,
  artworks = clubArtworks,
): BoardOrder => {
  const [one] = boardOf(log, { 'order-1': order }, today, artworks);
  if (one === undefined) throw new Error('no order');
  return one;
};
const turn = (log: OrderLog, order: Partial<Order> = {}, today = TODAY) => {
  const { turn: of } = only(log, order, today);
  return [of.turn, ...of.waits.map(({ why }) => why)];
};
const today = (log: OrderLog, order: Partial<Order> = {}, day = TODAY) =>
  todayList([only(log, order, day)], { today: day, idleDays: 5, lastPrintOn: null }).map(({ what, days }) => [
    what,
    days,
  ]);

const accepted = () => {
  const log = anOrderLog();
  tell(log, steps.enquired);
  const quote = quoteOut(log);
  tell(log, steps.quoted(quote.id));
  tell(log, steps.accepted(quote.id));
  return log;
};
const ready = () => {
  const log = accepted();
  pay(log, 38066);
  for (const { artworkId, version } of clubArtworks) approve(log, artworkId, version);
  return log;
};

describe('whose turn it is', () => {
  it('an enquiry is yours until its quote is out, whatever the customer still has to bring', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { day: '2026-11-25' });
    expect(turn(log)).toEqual(['you', 'answer']);
    const item = { id: 'letter', what: 'Letter of the club', doneBy: null, doneOn: null } as const;
    expect(turn(log, { openItems: [{ ...item, ofWhom: 'customer' }] })).toEqual([
      'you',
      'answer',
      'openItem',
    ]);
    expect(turn(log, { openItems: [{ ...item, ofWhom: 'maker' }] })).toEqual(['you', 'answer', 'openItem']);
    expect(turn(log, { openItems: [{ ...item, ofWhom: 'customer', doneOn: TODAY }] })).toEqual([
      'you',
      'answer',
    ]);
    tell(log, steps.quoted(quoteOut(log).id));
    expect(turn(log, { openItems: [{ ...item, ofWhom: 'customer' }] })).toEqual([
      'customer',
      'decision',
      'openItem',
    ]);
  });

  it('a quote is the customer’s until it has ended', () => {
    const log = anOrderLog();
    const quote = quoteOut(log);
    tell(log, steps.quoted(quote.id));
    expect(turn(log, {}, '2026-12-10')).toEqual(['customer', 'decision']);
    expect(turn(log, {}, '2026-12-11')).toEqual(['you', 'newQuote']);
  });

  it('after acceptance a proof is yours to send, then the answer and the deposit are the customer’s', () => {
    const log = accepted();
    expect(turn(log)).toEqual(['you', 'proof', 'deposit']);
    proofOut(log, [...clubArtworks]);
    expect(turn(log)).toEqual(['customer', 'approval', 'deposit']);
    expect(only(log).turn.dueOn).toBe('2026-11-30');
    tell(log, { what: 'revised', wish: 'larger' });
    expect(turn(log)).toEqual(['you', 'newProof', 'deposit']);
    // A proof of another version than the present one shows nothing to approve.
    proofOut(log, [{ artworkId: 'badge', version: 2 }]);
    expect(turn(log)).toEqual(['you', 'newProof', 'deposit']);
  });

  it('goes on through buying and making to the balance', () => {
    const log = ready();
    expect(turn(log)).toEqual(['you', 'orderBlanks']);
    const next = {
      blanksOrdered: 'nobody blanks',
      goodsIn: 'you print',
      printed: 'you press',
      pressed: 'you check',
      checked: 'you pack',
    } as const;
    for (const [what, is] of Object.entries(next)) {
      tell(log, steps.plain(what as keyof typeof next));
      expect(turn(log).join(' ')).toBe(is);
    }
    tell(log, steps.plain('packed'));
    expect(turn(log)).toEqual(['you', 'askBalance']);
    requestOut(log, 'balance', '2026-12-14');
    expect(turn(log)).toEqual(['customer', 'balance']);
    expect(turn(log, {}, '2026-12-15')).toEqual(['you', 'remind']);
    pay(log, 38065);
    expect(turn(log)).toEqual(['you', 'deliver']);
    tell(log, steps.plain('delivered'));
    expect(turn(log)).toEqual(['you', 'close']);
    tell(log, steps.plain('closed'));
    expect(turn(log)).toEqual(['nobody', 'over']);
  });

  it('goes back to the proof where a picture is made anew before it is pressed, and to the deposit that went back', () => {
    const badgeAnew = [
      { artworkId: 'badge', version: 2 },
      { artworkId: 'back', version: 1 },
    ];
    const log = ready();
    const anew = () => {
      const { turn: of } = only(log, {}, TODAY, badgeAnew);
      return [of.turn, ...of.waits.map(({ why }) => why)];
    };
    const versions = [...clubArtworks];
    tell(log, { ...steps.plain('blanksOrdered'), versions });
    expect(anew()).toEqual(['you', 'proof', 'blanks']);
    tell(log, { ...steps.plain('goodsIn'), versions });
    expect(anew()).toEqual(['you', 'proof']);
    tell(log, { ...steps.plain('scheduled'), versions });
    expect(anew()).toEqual(['you', 'proof']);
    tell(log, { ...steps.plain('printed'), versions });
    expect(anew()).toEqual(['you', 'proof']);
    proofOut(log, badgeAnew);
    expect(anew()).toEqual(['customer', 'approval']);
    pay(log, 38066, { more: { kind: 'reversal' } });
    expect(anew()).toEqual(['customer', 'approval', 'deposit']);
    expect(turn(log)).toEqual(['customer', 'deposit']);
    pay(log, 38066);
    approve(log, 'badge', 2);
    expect(anew()).toEqual(['you', 'press']);
    // What is pressed asks for no second yes.
    tell(log, { ...steps.plain('pressed'), versions: badgeAnew });
    expect(turn(log)).toEqual(['you', 'check']);
  });

  it.each(['held', 'cancelled'] as const)('nobody’s while it is %s', (what) => {
    const log = ready();
    tell(log, steps.plain(what));
    expect(turn(log)[0]).toBe('nobody');
    // The deposit of what is called off goes back, or is billed.
    expect(today(log)).toEqual(what === 'held' ? [] : [['giveBack', 1]]);
  });
});

describe('today', () => {
  it('an enquiry waits from the day it came', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { day: '2026-11-25' });
    expect(today(log)).toEqual([['answer', 1]]);
  });

  it('a quote is told of two days before it ends, and from then on', () => {
    const log = anOrderLog();
    const quote = quoteOut(log);
    tell(log, steps.quoted(quote.id));
    expect(today(log, {}, '2026-12-07')).toEqual([]);
    expect(today(log, {}, '2026-12-08')).toEqual([['quoteEnds', -2]]);
    expect(today(log, {}, '2026-12-12')).toEqual([['quoteEnds', 2]]);
  });

  it('blanks are to be ordered from their last day on', () => {
    expect(today(ready(), {}, '2026-11-30')).toEqual([]);
    expect(today(ready(), {}, '2026-12-01')).toEqual([['orderBlanks', 0]]);
    expect(today(ready(), {}, '2026-12-03')).toEqual([['orderBlanks', 2]]);
  });

  it('a proof is told of after three days without an answer, a deposit on its day', () => {
    const log = accepted();
    proofOut(log, [...clubArtworks], { day: '2026-11-26' });
    expect(today(log, {}, '2026-11-28')).toEqual([]);
    expect(today(log, {}, '2026-11-29')).toEqual([['proofUnanswered', 3]]);
    expect(today(log, {}, '2026-11-30')).toEqual([
      ['deposit', 0],
      ['proofUnanswered', 4],
    ]);
  });

  it('a balance is told of on its day and after, an order to pack at once', () => {
    const log = ready();
    tell(log, steps.plain('checked'));
    expect(today(log)).toEqual([['pack', -13]]);
    pay(log, 1);
    tell(log, steps.override('balance'));
    tell(log, steps.plain('delivered'));
    invoiceOut(log, 76131, { dueOn: '2026-12-20' });
    expect(today(log, {}, '2026-12-19')).toEqual([]);
    expect(today(log, {}, '2026-12-26')).toEqual([['balance', 6]]);
  });

  it('the printer is told of once it was idle as long as the workshop says, and not where nobody noted a print', () => {
    const idle = (lastPrintOn: string | null) => todayList([], { today: TODAY, idleDays: 5, lastPrintOn });
    expect(idle('2026-11-22')).toEqual([]);
    expect(idle('2026-11-21')).toEqual([{ what: 'printerIdle', orderId: null, on: '2026-11-21', days: 5 }]);
    expect(idle(null)).toEqual([]);
  });

  it('knows the last print by the record of ink and by steps of orders', () => {
    const log = ready();
    expect(lastPrintOn([], [only(log)])).toBeNull();
    tell(log, steps.plain('printed'), { day: '2026-11-20' });
    expect(lastPrintOn([], [only(log)])).toBe('2026-11-20');
    expect(lastPrintOn([{ body: { day: '2026-11-22' } }, { body: { day: '2026-11-19' } }], [only(log)])).toBe(
      '2026-11-22',
    );
  });

  it('a proof is yours to send from the acceptance on, an open item is told of on its day', () => {
    expect(today(accepted())).toEqual([['sendProof', -4]]);
    const item = {
      id: 'letter',
      what: 'Letter',
      ofWhom: 'customer',
      doneBy: '2026-12-02',
      doneOn: null,
    } as const;
    const log = anOrderLog();
    tell(log, steps.enquired);
    tell(log, steps.quoted(quoteOut(log).id));
    expect(today(log, { openItems: [item] }, '2026-12-01')).toEqual([]);
    expect(today(log, { openItems: [item] }, '2026-12-03')).toEqual([['openItem', 1]]);
  });

  it('is sorted by what is longest overdue, then by what costs most to miss; the printer waits without being late', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { orderId: 'answer', day: '2026-11-30' });
    for (const orderId of ['buy', 'choir']) {
      const quote = quoteOut(log, {}, { orderId });
      tell(log, steps.accepted(quote.id), { orderId });
      tell(log, steps.override('deposit'), { orderId });
      tell(log, steps.override('approval'), { orderId });
    }
    tell(log, steps.override('balance'), { orderId: 'choir' });
    tell(log, steps.plain('delivered'), { orderId: 'choir' });
    requestOut(log, 'balance', '2026-11-24', { orderId: 'choir' });
    const board = boardOf(log, { answer: {}, buy: {}, choir: {} }, '2026-12-01');
    const list = todayList(board, { today: '2026-12-01', idleDays: 5, lastPrintOn: '2026-11-01' });
    expect(list.map(({ what, orderId, days }) => [what, orderId, days])).toEqual([
      ['balance', 'choir', 7],
      ['answer', 'answer', 1],
      ['orderBlanks', 'buy', 0],
      ['printerIdle', null, 30],
    ]);
  });
});

describe('the board', () => {
  const log = anOrderLog();
  tell(log, { what: 'enquired', number: { year: 2026, count: 16, letter: 'A' } }, { orderId: 'bakery' });
  tell(log, { what: 'enquired', number: { year: 2026, count: 9, letter: 'A' } }, { orderId: 'choir' });
  tell(log, steps.enquired, { orderId: 'club' });
  const quote = quoteOut(log, {}, { orderId: 'club' });
  tell(log, steps.quoted(quote.id), { orderId: 'club' });
  tell(log, steps.enquired, { orderId: 'gone' });
  tell(log, { what: 'lost', why: 'price', note: '' }, { orderId: 'gone' });
  const board = boardOf(log, {
    bakery: { name: 'Fernhill Bakery aprons', wantedOn: '2026-12-18' },
    choir: { name: 'Harbour Chöir mugs' },
    club: {},
    gone: { name: 'Gone' },
    away: { name: 'Put away', archivedOn: '2026-11-01' },
  });
  const text = (order: BoardOrder) =>
    orderSearchText(order, order.facts.orderId === 'club' ? ['Ramblers', 'Alex'] : [], ['18 Dec']);
  const found = (asked: Partial<Parameters<typeof shownOrders>[1]>) =>
    shownOrders(board, { text: '', turn: 'all', shown: 'open', ...asked }, text).map(
      ({ facts }) => facts.orderId,
    );

  it('shows open orders by whose turn it is, the nearest day first and then the lowest number', () => {
    expect(found({})).toEqual(['choir', 'bakery', 'club']);
    expect(found({ turn: 'customer' })).toEqual(['club']);
    expect(found({ shown: 'closed' })).toEqual(['away', 'gone']);
  });

  it.each([
    ['fernhill', ['bakery']],
    ['26-016', ['bakery']],
    ['alex', ['club']],
    ['choir', ['choir']],
    ['2026-12-18', ['bakery']],
    ['18 dec', ['choir', 'bakery', 'club']],
    ['nobody', []],
  ])('finds %s', (asked, ids) => {
    expect(found({ text: asked })).toEqual(ids);
  });
});

describe('money of all open orders', () => {
  it('is told by currency: to come, late, in hand, and the worst day', () => {
    const log = anOrderLog();
    for (const orderId of ['kayak', 'choir']) {
      const quote = quoteOut(
        log,
        { sums: { subtotal: 39804, tax: 0, total: 39804 }, deposit: 19902 },
        { orderId },
      );
      tell(log, steps.accepted(quote.id), { orderId });
      pay(log, 19902, { orderId });
      tell(log, steps.override('approval'), { orderId });
    }
    tell(log, steps.override('balance'), { orderId: 'choir' });
    tell(log, steps.plain('delivered'), { orderId: 'choir' });
    requestOut(log, 'balance', '2026-11-20', { orderId: 'choir' });
    const euro = quoteOut(log, { currency: 'EUR' }, { orderId: 'abroad' });
    tell(log, steps.accepted(euro.id), { orderId: 'abroad' });
    const board = boardOf(log, { kayak: {}, choir: {}, abroad: {} });
    expect(purses(board, TODAY)).toMatchObject([
      { currency: 'EUR', toComeMinor: 76131, inHandMinor: 0 },
      {
        currency: 'USD',
        toComeMinor: 39804,
        inHandMinor: 19902,
        late: [{ orderId: 'choir', dueMinor: 19902, days: 6 }],
        toReachBankMinor: 39804,
      },
    ]);
  });

  it('tells apart what a paper asks for and what is late', () => {
    const log = accepted();
    const asked = () => purses(boardOf(log), TODAY).map((purse) => [purse.asked, purse.late]);
    expect(asked()).toEqual([[[], []]]);
    requestOut(log, 'deposit', '2026-11-30');
    expect(asked()).toEqual([[[{ orderId: 'order-1', dueMinor: 38066 }], []]]);
    pay(log, 38066);
    expect(asked()).toEqual([[[], []]]);
    requestOut(log, 'balance', '2026-11-20');
    expect(asked()).toEqual([[[], [{ orderId: 'order-1', dueMinor: 38065, days: 6 }]]]);
  });
});

describe('how quotes were answered', () => {
  it('is told by price and by days to the quote, with the count behind each and where that is few', () => {
    const log = anOrderLog();
    const orders: Record<string, Partial<Order>> = {};
    const quoted = (id: string, total: number, enquiredOn: string, won: boolean | null) => {
      orders[id] = {};
      tell(log, steps.enquired, { orderId: id, day: enquiredOn });
      const quote = quoteOut(log, { sums: { subtotal: total, tax: 0, total }, deposit: 0 }, { orderId: id });
      if (won === true) tell(log, steps.accepted(quote.id), { orderId: id });
      if (won === false) tell(log, { what: 'lost', why: 'price', note: '' }, { orderId: id });
    };
    // Quotes are of 26 November.
    quoted('a', 8000, '2026-11-26', true);
    quoted('b', 12000, '2026-11-26', true);
    quoted('c', 15000, '2026-11-25', false);
    quoted('d', 19999, '2026-11-23', true);
    quoted('e', 30000, '2026-11-16', false);
    quoted('open', 30000, '2026-11-16', null);
    const rates = hitRates(boardOf(log, orders), 'USD');
    expect(rates.all).toEqual({ band: null, decided: 5, won: 3, share: 0.6, isFew: false });
    expect(
      rates.byPrice.map(({ band, decided, won, isFew }) => [
        band.fromMinor,
        band.belowMinor,
        decided,
        won,
        isFew,
      ]),
    ).toEqual([
      [0, 10000, 1, 1, true],
      [10000, 20000, 3, 2, true],
      [20000, null, 1, 0, true],
    ]);
    expect(rates.byAnswer.map(({ decided, won }) => [decided, won])).toEqual([
      [2, 2],
      [1, 0],
      [1, 1],
      [0, 0],
      [1, 0],
    ]);
    expect(rates.byAnswer[3]?.share).toBeNull();
    expect(hitRates(boardOf(log, orders), 'EUR')).toMatchObject({
      all: { decided: 0, share: null },
      byPrice: [],
    });
  });
});
