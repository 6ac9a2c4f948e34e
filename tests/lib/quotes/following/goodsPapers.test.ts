import { describe, expect, it } from 'vitest';
import { careCardsOf, deliveryNoteOf, type GoodsAsked, proofOf } from '@/lib/quotes/following/goodsPapers';
import { deliveryNoteSchema, proofSchema } from '@/shared/schemas/orderPapers';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { asking, clubCustomer } from '@/tests/lib/quotes/quoteTools';

/* The club: 4 S, 9 M, 11 L, 8 XL, 4 2XL and 1 3XL, a back picture of 8 × 9.6 in and a badge. */

const goods = (asked: Parameters<typeof asking>[0] = {}): GoodsAsked => ({
  ...asking(asked),
  workshop: club().workshop,
});
const issued = { number: { count: 5, letter: 'A' }, day: TODAY };
const proof = (asked?: Parameters<typeof asking>[0]) =>
  proofOf(goods(asked), { revisionsUsed: 1, answerBy: '2026-11-30' }, issued);

describe('a proof', () => {
  it('shows every print of the order with its version, and counts the rounds of changes', () => {
    const made = proof();
    if (!made.ok) throw new Error(made.problem.kind);
    const { goods: shown, revisionsIncluded, revisionsUsed, answerBy } = proofSchema.parse(made.value);
    expect(shown[0]?.sizes.map(({ size, quantity }) => `${size} ${quantity}`)).toEqual([
      'S 4',
      'M 9',
      'L 11',
      'XL 8',
      '2XL 4',
      '3XL 1',
    ]);
    expect(shown[0]?.prints.map(({ position, artwork }) => [position, artwork.version])).toEqual([
      ['back', 1],
      ['leftChest', 1],
    ]);
    // 8 × 9.6 in are 203.2 × 243.84 mm.
    expect(shown[0]?.prints[0]).toMatchObject({ widthMm: 203.2, heightMm: 243.84 });
    expect({ revisionsIncluded, revisionsUsed, answerBy }).toEqual({
      ...{ revisionsIncluded: 2, revisionsUsed: 1 },
      answerBy: '2026-11-30',
    });
  });

  it('names what is printed on single pieces as given, a long one over several lines', () => {
    const long = 'x'.repeat(450);
    const made = proof({ input: clubWith({ 'job.lines.0.nameList': `Ada 7\n\nNguyễn 10\n${long}` }) });
    expect(made.ok && made.value.names).toEqual([
      ...['Ada 7', 'Nguyễn 10'],
      ...[200, 200, 50].map((letters) => 'x'.repeat(letters)),
    ]);
  });

  it('goes to nobody where no customer is named', () => {
    expect(proof({ customer: null })).toEqual({ ok: false, problem: { kind: 'noCustomer' } });
  });

  it('is not made of a job that names something that is gone', () => {
    const made = proof({ input: clubWith({ 'job.printerId': 'gone' }) });
    expect(!made.ok && made.problem).toMatchObject({ kind: 'jobUnclear', jobId: 'club-order' });
  });

  it('shows the pictures alone where no price is decided: nobody approves a price by it', () => {
    const made = proof();
    expect(JSON.stringify(made)).not.toMatch(/"(each|total|sums)"/);
  });
});

describe('a delivery note', () => {
  const names = [
    { id: 'a', name: 'Zoe', size: 'M' },
    { id: 'b', name: 'Ada', size: 'L', number: '7' },
    { id: 'c', name: 'Bob', size: 'M' },
  ];
  const order = {
    lines: [{ jobId: 'club-order', lineId: 'shirts', names }],
    delivery: { way: 'sent', addressId: 'hut', byPerson: true },
  };
  const customer = clubCustomer({
    addresses: [
      { id: 'bills', purpose: 'bills', text: '1 Bill Street' },
      { id: 'hut', purpose: 'goods', text: '3 Sample Lane' },
    ],
  });

  it('goes where goods go, tells sizes, and packs by size and name', () => {
    const made = deliveryNoteOf(goods({ order, customer }), issued);
    if (!made.ok) throw new Error(made.problem.kind);
    const note = deliveryNoteSchema.parse(made.value);
    expect(note.customer.address).toBe('3 Sample Lane');
    expect(note.way).toBe('sent');
    expect(note.goods[0]?.sizes.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(37);
    // M comes before L on the blank; within a size by name.
    expect(note.people.map(({ name }) => name)).toEqual(['Bob', 'Zoe', 'Ada']);
  });

  it('has one address where the customer has one', () => {
    const made = deliveryNoteOf(
      goods({
        customer: clubCustomer({ addresses: [{ id: 'a', purpose: 'bills', text: '1 Bill Street' }] }),
      }),
      issued,
    );
    expect(made.ok && made.value.customer.address).toBe('1 Bill Street');
  });

  it('lists nobody where the order has no names', () => {
    const made = deliveryNoteOf(goods(), issued);
    expect(made.ok && made.value.people).toEqual([]);
  });
});

describe('care cards', () => {
  it('are one for each piece, by what it is, also where nobody is named', () => {
    const jobs = [
      { jobId: 'club-order', input: club() },
      { jobId: 'fair-mugs', input: mugs() },
    ];
    const cards = careCardsOf(
      goods({ jobs, customer: null, order: { jobIds: ['club-order', 'fair-mugs'] } }),
    );
    const count = (kind: string) => cards?.cards.filter((one) => one === kind).length;
    expect(count('shirt')).toBe(37);
    expect(count('mug')).toBe(
      mugs()
        .job.lines.flatMap(({ quantities }) => quantities)
        .reduce((sum, { quantity }) => sum + quantity, 0),
    );
  });

  it('are none where nothing is ordered', () => {
    expect(careCardsOf(goods({ jobs: [] }))).toBeNull();
  });
});
