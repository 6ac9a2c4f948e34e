import { describe, expect, it } from 'vitest';
import { confirmationOf } from '@/lib/quotes/following/followingPapers';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { quoteSchema } from '@/shared/schemas/orderPapers';
import type { PaperSettings } from '@/shared/schemas/seller';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { clubAlternatives, clubCustomer, ready } from './quoteTools';

type Asked = Parameters<typeof ready>[0];

const termsOf = (asked: Asked = {}) =>
  new Map(ready(asked).body.terms.map(({ heading, text }) => [heading, text]));

const withPapers = (papers: Partial<PaperSettings>) =>
  clubWith({ 'workshop.papers': { page: null, words: [], terms: [], ownTerms: [], ...papers } });

describe('the terms of the worked quote', () => {
  it('bear its sums, its days and the habits of the workshop', () => {
    const terms = termsOf();
    expect(terms.get('Payment')).toBe('To pay now: 380.66 USD. Before the goods go out: 380.65 USD.');
    expect(terms.get('Proof')).toMatch(/ We book the work once we have your approval and any deposit\.$/);
    expect(terms.get('Delivery')).toBe(
      'Ready on December 11, 2026, if we have your approval and any deposit by November 30, 2026; later ones move the day.',
    );
    expect(terms.get('Changes')).toMatch(/^Rounds of changes included: 2\. /);
    expect(terms.get('Number of pieces')).toMatch(/made again within 7 days/);
    expect(terms.get('Something wrong?')).toMatch(/^Please tell us within 14 days,/);
    expect(terms.has('Your own garments')).toBe(false);
  });

  it('name no deposit where none is asked, and nothing before the goods go out where there is credit', () => {
    expect(termsOf({ order: { depositShare: 0 } }).get('Payment')).toBe(
      'Before the goods go out: 761.31 USD.',
    );
    expect(termsOf({ input: clubWith({ 'workshop.quoting.creditDays': 30 }) }).get('Payment')).toBe(
      'To pay now: 380.66 USD. To pay within 30 days of the invoice.',
    );
  });

  it('say how the goods reach the customer, and where', () => {
    const customer = clubCustomer({
      addresses: [
        { id: 'bills', purpose: 'bills', text: '1 Bill Street' },
        { id: 'hut', purpose: 'goods', text: 'Club hut\n3 Sample Lane' },
      ],
    });
    const delivery = (way: string | null, addressId: string | null = null) =>
      termsOf({ customer, order: { delivery: { way, addressId, byPerson: false } } }).get('Delivery');
    const ready = 'Ready on December 11, 2026, if we have';
    // Where goods go, if nobody chose another place.
    expect(delivery('brought')).toContain(`Brought to \u2068Club hut, 3 Sample Lane\u2069. ${ready}`);
    expect(delivery('sent', 'bills')).toContain(`Sent to \u20681 Bill Street\u2069. ${ready}`);
    expect(delivery('fetched')).toContain(`Fetched by you. ${ready}`);
    expect(delivery(null)).toMatch(/^Ready on December 11, 2026/);
    // A customer without any address.
    expect(termsOf({ order: { delivery: { way: 'sent' } } }).get('Delivery')).toContain(
      `Sent to you. ${ready}`,
    );
  });

  it('say it where no day can be told, and on the confirmation', () => {
    const order = { delivery: { way: 'brought', addressId: null, byPerson: false } };
    const { body } = ready({ order, input: clubWith({ 'workshop.blocks': null }) });
    const said = { heading: 'Delivery', text: 'Brought to you.' };
    expect(body.terms).toContainEqual(said);
    const quote = quoteBody({ body, risks: [] }, { count: 1, letter: 'A' }, ({ id }) => id);
    const confirmed = confirmationOf(
      { paperId: 'paper-1', quote },
      { alternativeId: null, by: 'Alex', on: TODAY },
      { number: { count: 1, letter: 'A' }, day: TODAY },
    );
    expect(confirmed.ok && confirmed.value.terms).toContainEqual(said);
  });

  it('bear an address as long as any', () => {
    const text = `${'A'.repeat(498)}\n1`;
    const customer = clubCustomer({ addresses: [{ id: 'far', purpose: 'both', text }] });
    const { body, risks } = ready({ customer, order: { delivery: { way: 'sent' } } });
    const quote = quoteBody({ body, risks }, { count: 1, letter: 'A' }, ({ id }) => id);
    expect(quoteSchema.parse(quote).terms.find(({ heading }) => heading === 'Delivery')?.text).toContain(
      'A'.repeat(498),
    );
  });

  it('say nothing of a day where none can be told', () => {
    expect(termsOf({ input: clubWith({ 'workshop.blocks': null }) }).has('Delivery')).toBe(false);
  });

  it('ask customers who bring the shirts for as many more as the checks do', () => {
    const input = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
    // Every size whole at 95 %: 50 blanks for 37 shirts.
    expect(termsOf({ input }).get('Your own garments')).toMatch(/Please bring 13 more than you need\.$/);
  });

  it('end with what was agreed besides', () => {
    expect([...termsOf({ order: { agreed: ' One shirt for the mascot. ' } })].at(-1)).toEqual([
      'Agreed besides',
      'One shirt for the mascot.',
    ]);
  });
});

describe('a quote in the words of its workshop', () => {
  const words = [
    { language: 'de', key: 'heading', text: '{count} Stück {name}' },
    { language: 'de', key: 'morePieces', text: '{count} mehr in {size}' },
    { language: 'de', key: 'moreEach', text: '{text}, je {amount}' },
    { language: 'de', key: 'withoutPrint', text: 'Ohne {print}' },
    { language: 'de', key: 'fibrePolyester', text: 'Reinpolyester' },
    { language: 'de', key: 'termPayment', text: 'Zahlung' },
  ];
  const terms = [{ language: 'de', key: 'payment' as const, text: 'Anzahlung: {deposit}.' }];
  const input = withPapers({ words, terms });
  const german = ready({ input, order: { alternatives: clubAlternatives, language: 'de' } }).body;

  it('names alternatives, fibres and terms by them, in the language of the paper', () => {
    expect(german.alternatives.map(({ label, says }) => [label, says])).toEqual([
      ['40 Stück Club shirt', '3 mehr in L, je 12,50'],
      ['Ohne Chest badge', '37 Stück Club shirt'],
    ]);
    expect(german.goods[0]?.says).toContain('100 % Reinpolyester');
    // German words, and figures as they are written where the workshop is.
    expect(german.terms[0]).toEqual({ heading: 'Zahlung', text: 'Anzahlung: 380,66 USD.' });
  });

  it('has our own words in any other language', () => {
    const english = ready({ input, order: { alternatives: clubAlternatives } }).body;
    expect(english.alternatives[0]).toMatchObject({
      label: '40 × Club shirt',
      says: '3 more in L, 12.50 each',
    });
    expect(english.terms[0]?.heading).toBe('Payment');
  });

  it('is cut where a label of its own is longer than its place', () => {
    const long = withPapers({ words: [{ language: 'en', key: 'heading', text: '{name} '.repeat(25) }] });
    const { alternatives } = ready({ input: long, order: { alternatives: clubAlternatives } }).body;
    expect(alternatives[0]?.label).toMatch(/^(Club shirt )+.*…$/);
    expect(alternatives[0]?.label.length).toBeLessThanOrEqual(120);
  });
});
