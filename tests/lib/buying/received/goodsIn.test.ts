import { describe, expect, it } from 'vitest';
import { cameBeyond } from '@/lib/buying/received/cameBeyond';
import { deliveriesOf, isOpen, wrongRows } from '@/lib/buying/received/claims';
import { goodsInEntries } from '@/lib/buying/received/goodsInEntries';
import { offerEach } from '@/lib/buying/received/offerEach';
import { paidPrices } from '@/lib/buying/received/paidPrices';
import { stillToCome } from '@/lib/buying/received/stillToCome';
import { takeBack, takeOver, withEdits } from '@/lib/learning/takeOver';
import { stockValue } from '@/lib/stock/stockValue';
import { newestPrices } from '@/lib/variances/pricesPaid';
import { blankSchema } from '@/shared/schemas/blank';
import { rateTakenSchema } from '@/shared/schemas/making/learnedEvents';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { type FaultClaim, type GoodsIn, goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { club } from '@/tests/fixtures/clubJob';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const shirt = (size: string) => ({ kind: 'blank', blankId: 'white-shirt', size }) as const;
const row = (size: string, more: Partial<GoodsIn['rows'][number]> = {}): GoodsIn['rows'][number] => ({
  ...{ item: shirt(size), ordered: 12, counted: 12, faulty: 0, fault: null, lot: null, amountMinor: null },
  ...more,
});
const goods = (rows: GoodsIn['rows'], more: Partial<GoodsIn> = {}): GoodsIn =>
  goodsInSchema.parse({ day: TEST_DAY, supplierId: 'mill', currency: 'USD', rows, ...more });

const supplier = supplierSchema.parse({
  name: 'Mill',
  offers: [
    {
      id: 'm',
      item: shirt('M'),
      tiers: [
        { from: 1, each: 5.1 },
        { from: 10, each: 4.83 },
      ],
    },
    { id: 'l', item: shirt('L'), tiers: [{ from: 6, each: 4.6 }] },
  ],
});
const { workshop, blanks } = club();
const documents = { workshopId: 'workshop', workshop, blanks, suppliers: { mill: supplier } };

describe('goods that came', () => {
  it('lie at home without the faulty ones, at what all that were billed cost', () => {
    // 59.40 for 12; 2 of 12 faulty leave 10.
    const noted = goodsInEntries(
      goods([row('M', { faulty: 2, fault: 'hole', lot: 'B7', amountMinor: 5940 })]),
    );
    expect(noted.map(({ kind }) => kind)).toEqual(['goodsIn', 'stockMove']);
    expect(noted[1]?.body).toEqual({
      item: { ...shirt('M'), lot: 'B7' },
      place: { kind: 'home' },
      grade: 'first',
      quantity: 10,
      cause: 'bought',
      reference: { kind: 'supplier', id: 'mill' },
      unitCost: { minor: 5940, currency: 'USD', per: 12 },
    });
  });

  it('that are faulty were billed so much, as far as that is known', () => {
    // 2 of 12 for 59.40, and 1 of 4 of another lot for 20.00: 9.90 and 5.00.
    const rows = [
      row('M', { faulty: 2, fault: 'hole', amountMinor: 5940 }),
      row('M', { counted: 4, ordered: 0, faulty: 1, fault: 'seam', lot: 'C', amountMinor: 2000 }),
    ];
    expect(wrongRows(goods(rows))).toMatchObject([{ faulty: 3, faultyMinor: 1490 }]);
    const unbilled = row('M', { counted: 4, ordered: 0, faulty: 1, fault: 'seam' });
    expect(wrongRows(goods([...rows, unbilled]))).toMatchObject([{ faulty: 4, faultyMinor: null }]);
  });

  it('tell an order of which several deliveries brought more than it asks for', () => {
    const order = { rows: [{ item: shirt('M'), quantity: 12 }] } as unknown as SupplyOrder;
    const came = (counted: number, faulty = 0) => goods([row('M', { counted, faulty })]);
    // 12 and 12; 10 with 2 of them faulty, then the 2 that lacked and 2 for the faulty; 7 and 5.
    expect(cameBeyond(order, [came(12), came(12)])).toEqual([{ item: shirt('M'), ordered: 12, usable: 24 }]);
    expect(cameBeyond(order, [came(10, 2), came(4)])).toEqual([]);
    expect(cameBeyond(order, [came(7), came(5)])).toEqual([]);
    // What one delivery brings too many of is told at its row; another size is none of the order's.
    expect(cameBeyond(order, [came(13)])).toEqual([]);
    expect(cameBeyond(order, [came(12), goods([row('L', { ordered: null })])])).toEqual([]);
  });

  it('tell one price of ink, of all bottles that were billed', () => {
    const ink = (name: string, counted: number, amountMinor: number | null) =>
      ({
        ...row('M', { counted, ordered: null, amountMinor }),
        item: { kind: 'ink', printerId: 'desk', name },
      }) as const;
    // 100 mL for 18.00 and 50 mL for 9.00 are 150 mL for 27.00; the third has no bill yet.
    const bill = goods([ink('Cyan', 100, 1800), ink('Black', 50, 900), ink('Yellow', 100, null)]);
    const paid = paidPrices(bill, documents, TEST_DAY);
    expect(paid.map(({ lesson }) => [lesson.subject.of, lesson.measured])).toEqual([['inkPrice', 0.18]]);
    const dear = goods([ink('Cyan', 100, 2400)]);
    expect(paidPrices(dear, documents, TEST_DAY)[0]?.lesson.places).toMatchObject([
      { kind: 'workshop', path: ['rates', 'inkPrice'], after: { value: 0.24, unit: 'money/mL' } },
    ]);
  });

  it('lose no cent of a price that is no whole number of them each', () => {
    // 13.50 for 100 sheets: one costs 13.5 cents.
    const sheets = {
      ...row('M', { amountMinor: 1350, counted: 100 }),
      item: { kind: 'paper', sheetId: 'letter' },
    } as const;
    const move = goodsInEntries(goods([sheets]))[1];
    if (move?.kind !== 'stockMove') throw new Error('nothing lies in stock');
    const entry = { ...move, id: 'm', version: 1, device: 'a', count: 1, at: 1 } as const;
    expect(stockValue([entry])).toMatchObject([{ quantity: 100, paid: [{ currency: 'USD', minor: 1350 }] }]);
  });

  it('that are faulty throughout lay nothing into stock, and without a bill nothing is said of the cost', () => {
    const noted = goodsInEntries(goods([row('M', { faulty: 12, fault: 'stain' }), row('L')]));
    expect(noted.slice(1).map(({ body }) => body)).toMatchObject([
      { item: { size: 'L' }, quantity: 12, unitCost: null },
    ]);
  });

  it('of paper may be in part, whose rest is no noise', () => {
    const paper = {
      ...row('M'),
      item: { kind: 'paper', sheetId: 'roll' } as const,
      counted: 0.3,
      faulty: 0.1,
    };
    expect(goodsInEntries(goods([paper]))[1]?.body).toMatchObject({ quantity: 0.2 });
  });
});

describe('a price that was paid', () => {
  const paid = (rows: GoodsIn['rows'], more: Partial<GoodsIn> = {}) =>
    paidPrices(goods(rows, more), documents, TEST_DAY);

  it('is offered for the blank and for the step of the offer that so many fall into', () => {
    const [one, ...others] = paid([row('M', { amountMinor: 5940 })]);
    expect(others).toEqual([]);
    expect(one?.lesson).toMatchObject({ measured: 4.95, subject: { of: 'blankPrice', size: 'M' } });
    expect(one?.lesson.places.map(({ kind, path, after }) => [kind, path.join('.'), after])).toEqual([
      ['blank', 'sizes.1.price', { value: 4.95, unit: 'money/piece', date: TEST_DAY, origin: 'yours' }],
      ['supplier', 'offers.m.tiers.1.each', 4.95],
    ]);
  });

  it('is no news where it is what is reckoned with, in another currency, or not billed', () => {
    const held = blanks['white-shirt']?.sizes.find(({ name }) => name === 'L')?.price?.value ?? 0;
    const same = { ...supplier.offers[1], tiers: [{ from: 6, each: held }] };
    const suppliers = { mill: supplierSchema.parse({ ...supplier, offers: [same] }) };
    const amountMinor = Math.round(held * 1200);
    expect(paidPrices(goods([row('L', { amountMinor })]), { ...documents, suppliers }, TEST_DAY)).toEqual([]);
    expect(paid([row('M', { amountMinor: 5940 })], { currency: 'EUR' })).toEqual([]);
    expect(paid([row('M')])).toEqual([]);
  });

  it('is that of all lots of a delivery together, as a run has it; what came for nothing tells none', () => {
    // 30 at 4.95 and 11 at 5.20 are 205.70 for 41; four more replaced faulty ones.
    const lots = [
      row('M', { counted: 30, lot: 'A', amountMinor: 14_850 }),
      row('M', { counted: 11, lot: 'B', amountMinor: 5_720 }),
      row('M', { counted: 4, lot: 'B', amountMinor: 0 }),
    ];
    const [one, ...others] = paid(lots);
    expect(others).toEqual([]);
    expect(one?.lesson.measured).toBeCloseTo(205.7 / 41, 10);
    const [asRun] = newestPrices([goods(lots)], 'USD', null);
    expect(asRun?.each).toBe(one?.lesson.measured);
    expect(paid([row('M', { amountMinor: 0 })])).toEqual([]);
  });

  it('goes into the step that so many fall into, in whatever order an offer lists them', () => {
    const tiers = supplier.offers[0]?.tiers.toReversed() ?? [];
    const falling = { ...supplier, offers: [{ ...supplier.offers[0], tiers }] };
    const suppliers = { mill: supplierSchema.parse(falling) };
    const [one] = paidPrices(goods([row('M', { amountMinor: 5940 })]), { ...documents, suppliers }, TEST_DAY);
    // 12 of them are ten and more, which stands first.
    expect(one?.lesson.places.at(-1)?.path.join('.')).toBe('offers.m.tiers.0.each');
  });

  it('taken over and back leaves every document bit for bit', () => {
    const [one] = paid([row('M', { amountMinor: 5940 })]);
    if (one === undefined) throw new Error('nothing to take over');
    const white = blankSchema.parse(blanks['white-shirt']);
    const { edits, body } = takeOver(one.lesson, (kind) => (kind === 'blank' ? white : supplier), TEST_DAY);
    expect(rateTakenSchema.safeParse(body).success).toBe(true);
    const taken = {
      blank: withEdits(white, 'blank', 'white-shirt', edits),
      supplier: withEdits(supplier, 'supplier', 'mill', edits),
    };
    expect(taken.blank.sizes[1]?.price?.value).toBe(4.95);
    expect(taken.supplier.offers[0]?.tiers[1]?.each).toBe(4.95);
    const back = takeBack(body, (kind) => (kind === 'blank' ? taken.blank : taken.supplier));
    const after = {
      blank: withEdits(taken.blank, 'blank', 'white-shirt', back.edits),
      supplier: withEdits(taken.supplier, 'supplier', 'mill', back.edits),
    };
    expect(JSON.stringify(after)).toBe(JSON.stringify({ blank: white, supplier }));
  });

  it('by an offer is that of its step, of the first where fewer are bought', () => {
    expect([1, 9, 10, 50].map((many) => offerEach(supplier, shirt('M'), many))).toEqual([
      5.1, 5.1, 4.83, 4.83,
    ]);
    expect(offerEach(supplier, shirt('L'), 2)).toBe(4.6);
    expect(offerEach(supplier, shirt('S'), 2)).toBeNull();
  });
});

describe('a claim', () => {
  const entry = <Kind extends string, Body>(kind: Kind, id: string, body: Body) => ({
    ...{ id, kind, body, version: 1, device: 'deviceaa', count: 1, at: 1 },
  });
  const step = (what: FaultClaim['step']) => ({ goodsInId: 'in', day: TEST_DAY, step: what });
  const rows = [
    row('M', { counted: 7, faulty: 1, fault: 'hole', lot: 'B7' }),
    // A second lot of what was ordered once: 7 and 4 of 12 came.
    row('M', { ordered: 0, counted: 4, faulty: 1, fault: 'stain', lot: 'B8' }),
    row('XL', { ordered: null, counted: 3 }),
  ];

  it('is of each thing once, with what did not come; what nobody ordered is not missing', () => {
    expect(wrongRows({ rows })).toEqual([
      { item: shirt('M'), faulty: 2, faultyMinor: null, faults: ['hole', 'stain'], missing: 1 },
    ]);
  });

  it('is open until the supplier made it good or refused', () => {
    const delivery = entry('goodsIn', 'in', goods(rows));
    const claim = (id: string, what: FaultClaim['step']) => entry('faultClaim', id, step(what));
    const said = claim('1', { what: 'claimed', rows: [{ item: shirt('M'), pieces: 3 }], note: '' });
    const back = claim('2', { what: 'refunded', amountMinor: 990, currency: 'USD', note: '' });
    const told = (claims: readonly (typeof said)[]) => deliveriesOf([delivery], claims)[0];
    const standings = [told([]), told([said]), told([said, back])];
    expect(standings.map((one) => one && [one.state, isOpen(one)])).toEqual([
      ['none', true],
      ['claimed', true],
      ['refunded', false],
    ]);
    expect(standings[2]?.refunded).toEqual([{ currency: 'USD', minor: 990 }]);
  });

  it('lets come what is still to come of an order, each thing once', () => {
    const ordered = {
      rows: [
        { item: shirt('M'), quantity: 12 },
        { item: shirt('L'), quantity: 6 },
      ],
    };
    const order = ordered as unknown as Parameters<typeof stillToCome>[0];
    expect(stillToCome(order, [{ rows }])).toEqual([
      { item: shirt('M'), quantity: 1 },
      { item: shirt('L'), quantity: 6 },
    ]);
    const all = [row('M'), row('L', { counted: 7 })];
    expect(stillToCome(order, [{ rows: all }])).toEqual([]);
  });
});
