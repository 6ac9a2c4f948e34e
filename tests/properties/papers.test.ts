import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelKeys } from '@/lib/papers/words/labelsFor';
import { type Quote, quoteSchema } from '@/shared/schemas/orderPapers';
import { fromSchema } from '@/tests/fixtures/fromSchema';
import { clubGoods, clubProof, clubQuote, heading, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';
import { cases } from '@/tests/tools/cases';

/* Whatever is typed, nothing leaves the page. Lengths in points: 42 at the sides, letters no lower than the foot. */
const SIDE = 42;
const FOOT = 26;
const HEAD = 34;

async function expectInside(bytes: Uint8Array) {
  const { pages } = await readPages(bytes);
  for (const { texts, width, height } of pages) {
    for (const { text, x, y, width: wide, size } of texts) {
      expect(x, text).toBeGreaterThan(SIDE - 0.6);
      expect(x + wide, text).toBeLessThan(width - SIDE + 0.6);
      expect(y, text).toBeGreaterThan(FOOT - 1);
      expect(y + 0.7 * size, text).toBeLessThan(height - HEAD);
      expect(size).toBeGreaterThanOrEqual(8);
    }
    // But for the foot, nothing is set where the foot stands.
    const atFoot = texts.filter(({ y }) => y < 40 && Math.abs(y - FOOT) > 0.1);
    expect(atFoot.map(({ text }) => text)).toEqual([]);
  }
  return pages;
}

/** What people type into a field that takes so many letters: one endless word, many words, lines, other scripts. */
const typed = (most: number) =>
  fc
    .oneof(
      fc.integer({ min: 1, max: most }).map((count) => 'W'.repeat(count)),
      fc.integer({ min: 1, max: most }).map((count) => 'Ramblers and friends '.repeat(most).slice(0, count)),
      fc.integer({ min: 1, max: most }).map((count) => 'a\n'.repeat(most).slice(0, count)),
      fc.integer({ min: 1, max: most }).map((count) => 'מועדון 12 '.repeat(most).slice(0, count)),
      fc.integer({ min: 1, max: most }).map((count) => 'Nguyễn Θεά Дождь '.repeat(most).slice(0, count)),
      fc.integer({ min: 1, max: most }).map((count) => '山'.repeat(count)),
    )
    .map((text) => (text.trim() === '' ? 'x' : text));

const party = fc.record({
  name: typed(120),
  address: typed(500),
  contact: typed(400),
  taxNumber: typed(60),
});

const long: fc.Arbitrary<Quote> = fc
  .record({
    page: fc.constantFrom('a4' as const, 'letter' as const),
    language: fc.constantFrom('en', 'he', 'de'),
    title: typed(120),
    party,
    person: typed(120),
    name: typed(120),
    says: typed(1000),
    size: typed(24),
    each: fc.integer({ min: 0, max: 1e11 }),
    terms: fc.array(fc.record({ heading: typed(80), text: typed(2000) }), { maxLength: 4 }),
    label: typed(120),
    choice: typed(300),
    why: typed(200),
    print: typed(120),
    widthMm: fc.integer({ min: 1, max: 20_000 }),
    heightMm: fc.integer({ min: 1, max: 20_000 }),
    dropMm: fc.option(fc.integer({ min: -500, max: 2000 })),
    shape: fc.constantFrom('garment' as const, 'mug' as const, 'panel' as const, 'other' as const),
    position: fc.constantFrom(
      'front' as const,
      'back' as const,
      'leftChest' as const,
      'rightSleeve' as const,
    ),
    kinds: fc.integer({ min: 1, max: 3 }),
  })
  .map((drawn) => ({
    ...clubQuote,
    page: drawn.page,
    language: drawn.language,
    title: drawn.title,
    seller: {
      ...drawn.party,
      tagline: drawn.choice.slice(0, 160),
      howToPay: drawn.says.slice(0, 800),
      logo: null,
    },
    customer: { ...drawn.party, person: drawn.person },
    discount: { amount: 100, why: drawn.why },
    charges: [{ what: drawn.name, amount: drawn.each }],
    terms: drawn.terms,
    alternatives: clubQuote.alternatives.map((one) => ({ ...one, label: drawn.label, says: drawn.choice })),
    goods: Array.from({ length: drawn.kinds }, (_, kind) => ({
      ...clubGoods,
      lineId: `line-${kind}`,
      name: drawn.name,
      says: drawn.says,
      shape: drawn.shape,
      prints: clubGoods.prints.map((print, at) => ({
        ...print,
        name: drawn.print,
        artwork: { ...print.artwork, name: drawn.print },
        position: at === 0 ? print.position : drawn.position,
        widthMm: drawn.widthMm,
        heightMm: drawn.heightMm,
        dropFromCollarMm: drawn.dropMm,
      })),
      sizes: [{ size: drawn.size, quantity: 7, each: drawn.each, total: 7 * drawn.each }],
    })),
    sums: { subtotal: 7 * drawn.each, tax: drawn.each, total: 8 * drawn.each },
  }));

test('whatever is typed into a quote stands inside its pages, in letters that can be read', () =>
  fc.assert(
    fc.asyncProperty(long, async (body) => {
      const { bytes } = await writtenPaper({ kind: 'quote', body }, { isForeignDrawn: true });
      await expectInside(bytes);
    }),
    cases(12),
  ));

test('the same holds of a proof with names to print', () =>
  fc.assert(
    fc.asyncProperty(
      long,
      fc.array(typed(200), { maxLength: 30 }),
      async ({ goods, page, language }, names) => {
        const body = {
          ...clubProof,
          page,
          language,
          names,
          goods: goods.map(({ start: _, sizes, ...one }) => ({
            ...one,
            sizes: sizes.map(({ size, quantity }) => ({ size, quantity })),
          })),
        };
        const { bytes } = await writtenPaper({ kind: 'proof', body }, { isForeignDrawn: true });
        await expectInside(bytes);
      },
    ),
    cases(5),
  ));

test('labels as long as a workshop may make them stand inside the pages', () =>
  fc.assert(
    fc.asyncProperty(typed(200), async (text) => {
      const words = labelKeys.map((key) => ({ language: 'en', key, text }));
      const { bytes } = await writtenPaper(
        { kind: 'quote', body: clubQuote },
        { words, isForeignDrawn: true },
      );
      await expectInside(bytes);
    }),
    cases(3),
  ));

test('every quote that the schema takes can be written', () =>
  fc.assert(
    fc.asyncProperty(fromSchema(quoteSchema), async (drawn) => {
      const read = quoteSchema.parse(drawn);
      const body = { ...read, currency: heading.currency };
      await expectInside((await writtenPaper({ kind: 'quote', body }, { isForeignDrawn: true })).bytes);
    }),
    cases(12),
  ));
