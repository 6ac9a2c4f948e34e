import { describe, expect, it } from 'vitest';
import { ifAllComeWords, weekWords } from '@/app/_words/orders/board/benchWeekWords';
import { boardAnswer } from '@/app/_words/orders/board/boardWords';
import { purseAnswer, purseFigures } from '@/app/_words/orders/board/purseWords';
import { byDayWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import { calendarOf } from '@/lib/calendar/calendar';
import { ifAllCome } from '@/lib/calendar/ifAllCome';
import { loadOf } from '@/lib/calendar/load';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { looseWork } from '@/tests/fixtures/benchWork';

const TODAY = '2026-11-26';
const context = {
  locale: 'en-GB',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;
const names: Readonly<Record<string, string>> = { choir: 'Harbour Choir mugs', kayak: 'Kayak Club bags' };
const nameOf = (id: string) => names[id] ?? '';
const purse = {
  currency: 'USD',
  toComeMinor: 62462,
  inHandMinor: 19902,
  late: [{ orderId: 'choir', dueMinor: 24396, days: 6 }],
  asked: [{ orderId: 'kayak', dueMinor: 38066 }],
  held: [],
  tooMuch: [],
  toReachBankMinor: 0,
  exposure: { points: [], lowest: { day: '2026-12-02', balanceMinor: -2800 } },
};

describe('days on the board', () => {
  it('are said as from today, with their year where it is another', () => {
    expect(
      ['2026-11-25', TODAY, '2026-11-27', '2026-11-30', '2027-01-04'].map((day) =>
        nearDayWords(day, TODAY, 'en-GB'),
      ),
    ).toEqual(['yesterday', 'today', 'tomorrow', 'Mon 30 Nov', 'Mon 4 Jan 2027']);
    expect(byDayWords(TODAY, TODAY, 'en-GB')).toBe('today');
    expect(byDayWords('2026-11-27', TODAY, 'en-GB')).toBe('by tomorrow');
  });
});

describe('the answer of the board', () => {
  it('says whose turn it is and what is late, in each currency', () => {
    // The sentence of the study.
    expect(boardAnswer({ you: 3, customer: 2 }, [purse], context)).toEqual([
      'Three wait for you',
      ', two for an answer; 243.96 is six days late',
    ]);
    const yen = {
      ...purse,
      currency: 'JPY',
      late: [
        { orderId: 'a', dueMinor: 900, days: 1 },
        { orderId: 'b', dueMinor: 100, days: 3 },
      ],
    };
    expect(boardAnswer({ you: 1, customer: 0 }, [yen], context)).toEqual([
      'One waits for you',
      '; 1,000 JPY is late, three days the longest',
    ]);
    expect(boardAnswer({ you: 0, customer: 0 }, [], context)).toEqual(['Nothing waits for you', '']);
  });
});

describe('the money of the board', () => {
  it('is told as to come, in hand, late, asked and at worst', () => {
    expect(purseAnswer(purse, context)).toEqual(['624.62 to come,', '199.02 in hand']);
    expect(
      purseFigures(purse, nameOf, TODAY, context).map(({ figure, line }) => `${figure} ${line}`),
    ).toEqual([
      '243.96 late by six days, Harbour Choir mugs',
      '380.66 asked for, Kayak Club bags',
      '28.00 of your own in it at worst, Wed 2 Dec',
    ]);
  });
  it('tells what is held of orders that were called off', () => {
    const kayak = { orderId: 'kayak', heldMinor: 38066 };
    const told = (held: readonly (typeof kayak)[]) =>
      purseFigures({ ...purse, late: [], asked: [], held }, nameOf, TODAY, context)[0];
    expect(told([kayak])).toEqual({
      ...{ key: 'held', figure: '380.66' },
      line: 'held of Kayak Club bags, called off: give it back or bill it',
    });
    // 380.66 and 19.34.
    expect(told([kayak, { orderId: 'choir', heldMinor: 1934 }])).toMatchObject({
      ...{ figure: '400.00', line: 'held of 2 orders, called off: give it back or bill it' },
    });
  });
  it('tells what came beyond all that is owed', () => {
    const tooMuch = [{ orderId: 'choir', tooMuchMinor: 7604 }];
    expect(purseFigures({ ...purse, late: [], asked: [], tooMuch }, nameOf, TODAY, context)[0]).toEqual({
      ...{ key: 'tooMuch', figure: '76.04' },
      line: 'too much came of Harbour Choir mugs: give it back',
    });
  });
  it('leaves out what is nothing', () => {
    const none = { ...purse, toComeMinor: 0, inHandMinor: 0, late: [], asked: [] };
    const paid = { ...none, exposure: { points: [], lowest: { day: TODAY, balanceMinor: 0 } } };
    expect(purseAnswer(paid, context)).toEqual(['Nothing to come,', 'nothing in hand']);
    expect(purseFigures(paid, nameOf, TODAY, context)).toEqual([]);
  });
});

describe('the weeks ahead', () => {
  const week = { monday: '2026-11-30', free: 540, accepted: 120, quoted: 300 };
  it('say what is taken of each, and what is over in words', () => {
    expect(weekWords(week, TODAY, context)).toEqual({
      ...{ name: '30 Nov', taken: '7 of 9 h', isOver: false },
      parts: 'accepted 2 h, asked or quoted 5 h, free 2 h',
    });
    expect(weekWords({ ...week, monday: '2026-11-23', free: 300 }, TODAY, context)).toMatchObject({
      ...{ name: 'this week', taken: '7 of 5 h, 2 h over', isOver: true },
    });
    expect(weekWords({ ...week, accepted: 0, quoted: 0 }, TODAY, context).taken).toBe('9 h free');
    expect(weekWords({ ...week, free: 0, accepted: 0, quoted: 0 }, TODAY, context).taken).toBe('not free');
  });

  it('say in one sentence what would be if all that is open came', () => {
    const calendar = calendarOf({ blocks: [...usualBlocks], daysOff: [] });
    if (calendar === null) throw new Error('no calendar');
    const said = (minutes: number, wantedOn: string, ids: readonly string[] = ['kayak']) =>
      ifAllComeWords(
        ifAllCome(
          calendar,
          TODAY,
          { orders: [], load: loadOf(calendar, [], TODAY) },
          ids.map((id) => ({ id, wantedOn, works: [looseWork(minutes)], blanks: null })),
          0.4,
        ),
        { weeks: [week], open: ids.length },
        nameOf,
        TODAY,
        context,
      ).join(' ');
    // From Thursday: an hour, an hour, four on Saturday, and ready on Tuesday with the usual day between; an hour on
    // Monday makes it Wednesday.
    expect(said(360, '2026-12-01')).toBe('If the open one comes, all of it fits: 6 h of work');
    expect(said(420, '2026-12-01')).toBe('If the open one comes, Kayak Club bags would be one day late');
    // 240 min of 360.
    expect(said(120, '2026-12-01', ['kayak', 'choir'])).toBe(
      'If both open ones come, all of it fits: 4 h of work',
    );
    expect(said(60, '2026-12-01', ['kayak', 'choir', 'bakery'])).toBe(
      'If all three open ones come, all of it fits: 3 h of work',
    );
    const none = (open: number) => ifAllComeWords(null, { weeks: [week], open }, nameOf, TODAY, context);
    expect(none(0)).toEqual(['Nothing is asked or quoted;', '7 h are free in four weeks']);
    expect(none(1)).toEqual([
      'Of what is asked or quoted no job can be planned yet;',
      '7 h are free in four weeks',
    ]);
  });
});
