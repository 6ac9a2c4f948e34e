import { describe, expect, it } from 'vitest';
import type { BuyingAsked } from '@/lib/buying/buyingAsked';
import { planBuying } from '@/lib/buying/planBuying';
import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { asked, consumable, lying, shirt, supplier, work } from './asked';

const plan = (of: BuyingAsked = asked()) => planBuying(of, grid);
const paper: SupplyItem = { kind: 'paper', sheetId: 'letter' };

function rowOf(of: BuyingAsked, item: SupplyItem) {
  const row = plan(of).rows.find((one) => stockKey(one.item) === stockKey(item));
  if (row === undefined) throw new Error('nothing of it is needed');
  return row;
}

const troublesOf = (of: BuyingAsked) => plan(of).troubles.filter(({ what }) => what !== 'freightUnknown');

describe('a buying list of the worked example', () => {
  it('has 45 blanks at the usual cover, and tells all three choices', () => {
    const { covers, rows } = plan();
    expect(covers.map(({ cover, bought }) => [cover, bought])).toEqual([
      ['expected', 40],
      ['usual', 45],
      ['sure', 50],
    ]);
    // The trade's worked figures: 35.3, 78.9 and 95.05 %.
    expect(covers.map(({ everySize }) => Math.round(everySize * 1000) / 10)).toEqual([35.3, 78.9, 95.1]);
    expect(covers[0]?.sizes.map(({ take }) => take)).toEqual([4, 10, 12, 9, 4, 1]);
    expect(covers[2]?.everySize).toBeCloseTo(0.9505, 4);
    const blanks = rows.filter(({ item }) => item.kind === 'blank');
    expect(blanks.map(({ good, need, toBuy }) => [good, need, toBuy])).toEqual([
      [4, 5, 5],
      [9, 11, 11],
      [11, 13, 13],
      [8, 10, 10],
      [4, 5, 5],
      [1, 1, 1],
    ]);
    // One 3XL and no spare is whole as often as a blank ends good.
    expect(blanks.at(-1)?.chance).toBeCloseTo(0.965 * 0.98 * 0.99, 9);
  });

  it('has 53 sheets with tests and rejects, and five to spare', () => {
    const row = rowOf(asked(), paper);
    expect([row.need, row.purchase?.amountMinor]).toEqual([58, 812]);
    expect(row.expected).toBeCloseTo(52.9, 2);
  });

  it('tells the ink in all, and in rows only what is known by channel', () => {
    // 35.10 mL, of which 4 for cleaning: one of each ink. The coverage of its pictures is typed as a total.
    const { ink, rows } = plan();
    expect(ink[0]?.mL).toBeCloseTo(35.1, 1);
    expect(ink[0]?.untoldMl).toBeCloseTo(31.1, 1);
    expect(rows.flatMap(({ item, need }) => (item.kind === 'ink' ? [[item.name, need]] : []))).toEqual([
      ['Cyan', 1],
      ['Magenta', 1],
      ['Yellow', 1],
      ['Black', 1],
    ]);
  });

  it('shares ink typed by channel out by channel, and nothing of it is lost', () => {
    const channels = { kind: 'channels', cyan: 0.3, magenta: 0.3, yellow: 0.3, black: 0.2 };
    const of = asked({
      works: [
        work(clubWith({ 'artwork:hill-path.coverage': channels, 'artwork:club-crest.coverage': channels })),
      ],
    });
    const { ink, rows } = plan(of);
    const inks = rows.flatMap(({ item, need }) => (item.kind === 'ink' ? [need] : []));
    expect(ink[0]?.untoldMl).toBe(0);
    expect(inks.reduce((sum, one) => sum + one, 0)).toBeCloseTo(ink[0]?.mL ?? 0, 9);
    // Three elevenths of what is printed, and one mL of cleaning.
    expect(inks[0]).toBeCloseTo((((ink[0]?.mL ?? 0) - 4) * 3) / 11 + 1, 9);
  });

  it('adds what is paid now: 217.00 of blanks, 8.12 of paper, 0.64 of ink, 9.50 of freight', () => {
    // 32 at 4.60, 4 at 6.10, 1 at 7.10 are 178.70; spares 38.30.
    expect(plan().cash).toEqual({
      ...{ goodsMinor: 22_576, freightMinor: 950, totalMinor: 23_526, dearerAtMostMinor: 0, unpriced: 0 },
    });
  });

  it('tells what is left and its worth: 45 less the expected 39.52', () => {
    const { rows } = plan();
    const small = rows[0];
    // 5 − 4 ÷ 0.93624 = 0.7276, at 4.60.
    expect(small?.left).toBeCloseTo(0.7276, 3);
    expect(small?.leftWorthMinor).toBe(335);
    // The only 3XL is used up, and more.
    expect([rows[5]?.left, rows[5]?.leftWorthMinor]).toEqual([0, 0]);
  });

  it('leaves the same over once the goods have come', () => {
    const before = plan();
    const came = before.rows.flatMap(({ item, purchase }) =>
      item.kind === 'blank' ? [lying(item, purchase?.quantity ?? 0)] : [],
    );
    const after = plan(asked({ piles: came }));
    expect(after.rows.filter(({ item }) => item.kind === 'blank').map(({ purchase }) => purchase)).toEqual(
      came.map(() => null),
    );
    expect(after.left).toEqual(before.left);
    // Of what others keep nothing is left for this work.
    const kept = asked({ piles: [lying(shirt('S'), 9)], reserved: [{ item: shirt('S'), quantity: 4 }] });
    expect(rowOf(kept, shirt('S')).left).toBeCloseTo(0.7276, 3);
  });

  it('asks the customer for what they bring, and buys none of it', () => {
    const input = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
    const { rows, asked: brought, covers } = plan(asked({ works: [work(input)] }));
    expect(rows.some(({ item }) => item.kind === 'blank')).toBe(false);
    expect(brought[0]?.sizes.map(({ ask }) => ask)).toEqual([6, 12, 14, 10, 6, 2]);
    expect(covers[1]).toMatchObject({ bought: 0, everySize: 1 });
  });

  it('tells spares where scrap is as high as it may well be', () => {
    const upperScrap = [
      { lineId: 'shirts', placementId: 'back', scrap: 0.069 },
      { lineId: 'shirts', placementId: 'badge', scrap: 0.059 },
    ];
    const upper = plan(asked({ works: [work(club(), { upperScrap })] })).atUpperScrap;
    // One 3XL: 0.99 × 0.931 × 0.941 = 0.8673 without a spare, 1 − 0.1327² = 0.9824 with one.
    const last = upper?.sizes.at(-1);
    expect(last?.chance).toBeCloseTo(last?.take === 1 ? 0.8673 : 0.9824, 4);
    expect(upper?.bought).toBeGreaterThan(45);
    expect(upper?.everySize).toBeGreaterThanOrEqual(0.75);
    expect(plan().atUpperScrap).toBeNull();
  });

  it('says which jobs are not in it', () => {
    const stopped = clubWith({ 'blank:white-shirt.fibres': [{ fibre: 'cotton', share: 1 }] });
    const of = asked({
      works: [work(stopped)],
      list: { works: [{ jobId: 'club' }, { jobId: 'lost' }] },
    });
    expect(plan(of).rows).toEqual([]);
    expect(troublesOf(of)).toEqual([
      { what: 'jobGone', jobId: 'lost' },
      { what: 'uncosted', jobId: 'club', name: 'Club shirts' },
    ]);
  });
});

describe('stock comes first', () => {
  it('less what others will use', () => {
    const of = asked({ piles: [lying(shirt('S'), 4)], reserved: [{ item: shirt('S'), quantity: 1 }] });
    expect(rowOf(of, shirt('S'))).toMatchObject({
      stock: { kind: 'counted', onHand: 4, reserved: 1, free: 3 },
      ...{ need: 5, toBuy: 2, purchase: { quantity: 2 } },
    });
  });

  it('and what nobody counted is told and bought whole, where none counted is none', () => {
    expect(rowOf(asked(), shirt('S'))).toMatchObject({ stock: { kind: 'notCounted' }, toBuy: 5 });
    expect(rowOf(asked({ piles: [lying(shirt('S'), 0)] }), shirt('S')).stock.kind).toBe('counted');
  });

  it('and enough of it buys nothing', () => {
    const row = rowOf(asked({ piles: [lying(shirt('S'), 9)] }), shirt('S'));
    expect([row.toBuy, row.purchase]).toEqual([0, null]);
    // 9 − 4 ÷ 0.93624 = 4.7276 are left, at 4.60.
    expect(row.left).toBeCloseTo(4.7276, 3);
    expect(row.leftWorthMinor).toBe(2175);
  });

  it('and less than none, or more promised than there is, is told', () => {
    const of = asked({
      piles: [lying(shirt('S'), -2), lying(shirt('M'), 3)],
      reserved: [{ item: shirt('M'), quantity: 5 }],
    });
    expect(rowOf(of, shirt('S')).toBuy).toBe(5);
    expect(rowOf(of, shirt('M')).toBuy).toBe(11);
    expect(troublesOf(of)).toEqual([
      { what: 'negativeStock', item: shirt('S'), onHand: -2 },
      { what: 'reservedBeyond', item: shirt('M'), onHand: 3, reserved: 5 },
    ]);
  });

  it('and seconds, or what is in the van, do not count', () => {
    const second = { ...lying(shirt('S'), 9), grade: 'second' as const };
    const away = { ...lying(shirt('S'), 9), place: { kind: 'van' as const } };
    expect(rowOf(asked({ piles: [second, away] }), shirt('S')).toBuy).toBe(5);
  });
});

describe('the maker’s own numbers', () => {
  it('are bought, and told where they are below the need', () => {
    const of = asked({ list: { held: [{ item: shirt('S'), quantity: 4 }] } });
    expect(rowOf(of, shirt('S'))).toMatchObject({ held: 4, toBuy: 5, purchase: { quantity: 4 } });
    expect(troublesOf(of)).toEqual([{ what: 'heldBelowNeed', item: shirt('S'), held: 4, toBuy: 5 }]);
    // Four and no spare come out whole as often as four blanks end good.
    expect(rowOf(of, shirt('S')).chanceWithAll).toBeCloseTo((0.965 * 0.98 * 0.99) ** 4, 9);
  });

  it('none of it buys none', () => {
    const of = asked({ list: { held: [{ item: shirt('S'), quantity: 0 }] } });
    expect(rowOf(of, shirt('S')).purchase).toBeNull();
  });

  it('are filled to whole packs, told, and nothing is bought that nothing needs', () => {
    const suppliers = [
      supplier('mill', {
        name: 'Mill',
        offers: [{ id: 's', item: shirt('S'), packSize: 12, tiers: [{ from: 1, each: 4 }] }],
      }),
    ];
    const held = [
      { item: shirt('S'), quantity: 7 },
      { item: shirt('5XL'), quantity: 2 },
    ];
    const of = asked({ suppliers, list: { held } });
    expect(rowOf(of, shirt('S')).purchase).toMatchObject({ quantity: 12, packs: 1, amountMinor: 4800 });
    expect(troublesOf(of)).toEqual([
      { what: 'heldUnneeded', item: shirt('5XL'), held: 2 },
      { what: 'heldNotPacks', item: shirt('S'), held: 7, buy: 12 },
    ]);
  });
});

describe('consumables', () => {
  const use = (per: 'press' | 'sheet' | 'piece' | 'order' | 'session', amount: number, more = {}) => ({
    ...{ id: per, per, amount },
    ...more,
  });

  it.each([
    // 78.88 presses, 52.90 sheets, 37 pieces, one order, one session.
    ['press', 1, 'sheet', 79],
    ['press', 0.3, 'm', 23.664],
    ['sheet', 1, 'piece', 53],
    ['piece', 1, 'piece', 37],
    ['order', 2, 'piece', 2],
    ['session', 1, 'piece', 1],
  ] as const)('that go by %s are used %d each: %s %d', (per, amount, unit, need) => {
    const consumables = [consumable('it', { name: 'It', unit, uses: [use(per, amount)] })];
    const row = rowOf(asked({ consumables }), { kind: 'consumable', consumableId: 'it' });
    expect(row.need).toBeCloseTo(need, 2);
    expect(row.purchase?.priceIs).toBe('none');
  });

  it('of one packaging alone go with it, and what nothing uses is not in the list', () => {
    const consumables = [
      consumable('bag', { name: 'Bag', uses: [use('piece', 1, { packagingIds: ['club-bag'] })] }),
      consumable('box', { name: 'Box', uses: [use('piece', 1, { packagingIds: ['mug-box'] })] }),
    ];
    const { rows, cash, troubles } = plan(asked({ consumables }));
    const ids = rows.flatMap(({ item }) => (item.kind === 'consumable' ? [item.consumableId] : []));
    expect(ids).toEqual(['bag']);
    expect(cash.unpriced).toBe(1);
    expect(troubles).toContainEqual({ what: 'noPrice', item: { kind: 'consumable', consumableId: 'bag' } });
  });

  it('of one order are packed once for all its jobs', () => {
    const consumables = [consumable('carton', { name: 'Carton', uses: [use('order', 1)] })];
    const works = [
      work(club(), { orderId: 'one' }),
      work(mugs(), { jobId: 'mugs', orderId: 'one' }),
      work(club(), { jobId: 'again' }),
    ];
    const row = rowOf(asked({ consumables, works }), { kind: 'consumable', consumableId: 'carton' });
    expect([row.need, row.byWork]).toEqual([2, [1, 0, 1]]);
  });
});

describe('a cover as the list would be bought at it', () => {
  const at = (fields: Parameters<typeof asked>[0] = {}) => planBuying(asked(fields), grid).covers;
  const home = { S: 5, M: 11, L: 11, XL: 10, '2XL': 5, '3XL': 1 };
  const piles = Object.entries(home).map(([size, many]) => lying(shirt(size), many));

  it('pays for its blanks, and for what is short of them where some lie here', () => {
    const [expected, usual] = at();
    // 45 blanks at 217.00, 40 at 35 × 4.60 + 4 × 6.10 + 7.10 = 192.50; all else of the list is the same.
    expect((usual?.toPayMinor ?? 0) - (expected?.toPayMinor ?? 0)).toBe(2450);
    const [stocked, more] = at({ piles });
    // 13 L are two more than lie here, 12 are one more.
    expect((more?.toPayMinor ?? 0) - (stocked?.toPayMinor ?? 0)).toBe(460);
    expect((usual?.toPayMinor ?? 0) - (more?.toPayMinor ?? 0)).toBe(21_700 - 920);
    expect(more?.cost).toBeCloseTo(217, 9);
  });

  it('is the sum of the list at the chosen one', () => {
    const { covers, cash } = planBuying(asked({ piles }), grid);
    expect(covers[1]?.toPayMinor).toBe(cash.totalMinor);
  });

  it('reaches what all that will be there reaches, with the maker’s own numbers', () => {
    const [expected, usual] = at();
    expect(usual?.everySizeWithAll).toBeCloseTo(usual?.everySize ?? 0, 12);
    // What lies here is more than the smallest cover asks for.
    expect(at({ piles })[0]?.everySizeWithAll).toBeGreaterThan(expected?.everySize ?? 1);
    // Ten L for eleven that are wanted.
    const short = at({ list: { held: [{ item: shirt('L'), quantity: 10 }] } });
    expect(short.map(({ everySizeWithAll }) => everySizeWithAll)).toEqual([0, 0, 0]);
    expect(short[1]?.everySize).toBeCloseTo(0.789, 3);
  });
});

describe('what the jobs reckon with by a rate', () => {
  const set = (more: Partial<BuyingAsked> = {}) =>
    plan(asked(more)).notSetUp.map(({ name, quantity, cost }) => [
      name,
      quantity,
      Math.round(cost * 100) / 100,
    ]);
  const using = (name: string, per: 'press' | 'piece' | 'order', more = {}) =>
    consumable(name, { name, uses: [{ id: per, per, amount: 1, ...more }] });

  it('is told where no consumable stands for it: how much, and what the job takes for it', () => {
    // 78.88 presses at 0.03 and 0.035, 37 pieces at 0.15, one order at 3.50.
    expect(set()).toEqual([
      ['Tape or sleeve', 79, 2.37],
      ['Protective paper', 79, 2.76],
      ['Bag and size sticker', 37, 5.55],
      ['Carton, tape and note', 1, 3.5],
    ]);
  });

  it('is told no more once a consumable does, and one used by the press is what it is called', () => {
    const names = (consumables: BuyingAsked['consumables']) => set({ consumables }).map(([name]) => name);
    const [, paper, bag, carton] = ['', 'Protective paper', 'Bag and size sticker', 'Carton, tape and note'];
    expect(names([using('Heat tape', 'press')])).toEqual([paper, bag, carton]);
    expect(names([using('Bands', 'press')])).toHaveLength(4);
    expect(names([using('Bands', 'press'), using('Tissue', 'press')])).toEqual([bag, carton]);
    expect(names([using('Bag', 'piece', { packagingIds: ['club-bag'] })])).not.toContain(bag);
    expect(names([using('Box', 'piece', { packagingIds: ['mug-box'] })])).toContain(bag);
    expect(names([using('Card', 'order')])).not.toContain(carton);
  });

  it('prices what was set up for it, and nothing that is called otherwise', () => {
    const priced = (name: string, amount: number) => {
      const tape = consumable('tape', { name, uses: [{ id: 'press', per: 'press', amount }] });
      return rowOf(asked({ consumables: [tape] }), { kind: 'consumable', consumableId: 'tape' }).purchase;
    };
    // 79 at 0.03; a press that takes two takes 158 at half of it.
    expect(priced('Tape or sleeve', 1)).toMatchObject({ quantity: 79, amountMinor: 237, priceIs: 'own' });
    expect(priced('Tape or sleeve', 2)).toMatchObject({ quantity: 158, amountMinor: 237 });
    expect(priced('Heat tape', 1)).toMatchObject({ quantity: 79, amountMinor: null, priceIs: 'none' });
  });

  it('packs the jobs of one order once', () => {
    const works = [work(club(), { orderId: 'one' }), work(mugs(), { jobId: 'mugs', orderId: 'one' })];
    expect(set({ works }).filter(([name]) => name === 'Carton, tape and note')).toEqual([
      ['Carton, tape and note', 1, 3.5],
    ]);
  });
});
