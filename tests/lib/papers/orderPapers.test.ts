import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PaperSource } from '@/lib/papers/paperOf';
import {
  clubConfirmation,
  clubCredit,
  clubDelivery,
  clubGoods,
  clubInvoice,
  clubProof,
  clubQuote,
  clubReceipt,
  clubRequest,
  writtenPaper,
} from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const read = async (source: PaperSource) => readPages((await writtenPaper(source)).bytes);
const quote = (changes: Partial<typeof clubQuote> = {}) =>
  read({ kind: 'quote', body: { ...clubQuote, ...changes } });

/** Numbers within drawings, which have the least size, from the left. */
const marksOf = (pages: Awaited<ReturnType<typeof readPages>>['pages']) =>
  pages
    .flatMap(({ texts }) => texts.filter(({ text, size }) => /^\d$/.test(text) && Math.abs(size - 8) < 0.01))
    .toSorted((one, other) => one.x - other.x);

/** The club's order: 32 × 19.00 + 4 × 20.50 + 1 × 21.50 = 711.50; with 7 % 761.305, to the cent 761.31. */
describe('the quote of the club', () => {
  it('has every size, sum and deposit as the body has them', async () => {
    const { lines } = await quote();
    for (const line of [
      'S to XL 32 19.00 608.00',
      '2XL 4 20.50 82.00',
      '3XL 1 21.50 21.50',
      'Setting up, proof and delivery included',
      'tax 7% 49.81',
      'Total, USD 761.31',
      'deposit 50%, to pay now 380.66',
      'balance 380.65',
    ])
      expect(lines).toContain(line);
    expect(lines.find((line) => line.endsWith('without tax 711.50'))).toBeDefined();
  });

  it('names seller, customer, number with its version, and every day', async () => {
    const { text } = await quote();
    for (const told of [
      'Placeholder Press',
      '12 Sample Lane, Exampleton',
      '555 0100 · post@placeholder.example',
      'for Exampleton Ramblers Club',
      'Alex Placeholder',
      'number 26-014A, version 1',
      'November 26, 2026',
      'valid until December 10, 2026',
      'approve by November 30, 2026',
      'ready December 14, 2026',
    ])
      expect(text).toContain(told);
  });

  it('tells each print with its size and its distance from the collar', async () => {
    const { text } = await quote();
    expect(text).toContain('37 × White shirts, printed on both sides');
    expect(text).toContain('Sizes: S 4, M 9, L 11, XL 8, 2XL 4, 3XL 1');
    expect(text).toContain('8 × 9.6 in, 3.5 in below the collar');
    expect(text).toContain('3.5 × 3.5 in, 2.5 in below the collar');
    // In millimetres 8 in are 203.2.
    expect((await quote({ length: 'mm' })).text).toContain('203.2 × 243.8 mm, 88.9 mm below the collar');
  });

  it('draws its prints to one scale', async () => {
    const across = (await quote()).pages[0]?.across ?? [];
    // The back is 203.2 mm wide, the badge 88.9 mm; of a shirt of 676 mm across its sleeves on a third of the page at most.
    const back = across.filter((wide) => wide > 20 && wide < 170 * (203.2 / 676));
    expect(back.some((wide) => across.some((badge) => Math.abs(badge / wide - 88.9 / 203.2) < 0.001))).toBe(
      true,
    );
  });

  it('tells a size once, with all of its pieces, where several prices give it several rows', async () => {
    // Three more L at 12.50: 11 and 3 are 14 of one size.
    const more = { size: 'L', quantity: 3, each: 1250, total: 3750 };
    const { text, lines } = await quote({ goods: [{ ...clubGoods, sizes: [...clubGoods.sizes, more] }] });
    expect(text).toContain('Sizes: S 4, M 9, L 14, XL 8, 2XL 4, 3XL 1');
    expect(lines).toContain('L 3 12.50 37.50');
  });

  it('numbers all prints where the name of one finds no room in its place, there and in the words', async () => {
    const { pages, text } = await quote();
    expect(marksOf(pages).map(({ text: mark }) => mark)).toEqual(['1', '2']);
    expect(text).toContain('1 Back: Hill path picture');
    expect(text).toContain('2 Left chest: Club crest');
    // Its place is large enough for the name, but bears its number as the other does.
    expect(text.split('Hill path')).toHaveLength(2);
  });

  it('numbers a picture that is shown as well, where another print bears a number', async () => {
    const fileId = 'a'.repeat(64);
    const red = { width: 4, height: 5, channels: 3, background: '#d01010' } as const;
    const pictures = new Map([[fileId, new Uint8Array(await sharp({ create: red }).png().toBuffer())]]);
    const picture = { fileId, fileName: 'hill.png' };
    const withPicture = (placed: readonly string[]) => ({
      ...clubQuote,
      goods: [
        {
          ...clubGoods,
          prints: clubGoods.prints.map((print) =>
            placed.includes(print.placementId) ? { ...print, picture } : print,
          ),
        },
      ],
    });
    const readWith = async (placed: readonly string[]) =>
      readPages((await writtenPaper({ kind: 'quote', body: withPicture(placed) }, { pictures })).bytes);
    const { pages, text } = await readWith(['back']);
    const [one, two, ...more] = marksOf(pages);
    expect([one?.text, two?.text, more]).toEqual(['1', '2', []]);
    expect(text).toContain('1 Back: Hill path picture');
    expect(text).toContain('2 Left chest: Club crest');
    // The back is drawn to the left of the front, and its number stands beside its picture.
    expect(one?.x).toBeLessThan(two?.x ?? 0);
    // With both pictures there is nothing to tell apart.
    const both = await readWith(['back', 'chest']);
    expect(marksOf(both.pages)).toEqual([]);
    expect(both.text).not.toMatch(/[12] (Back|Left chest):/);
  });

  it('says nothing of a picture that is not shown: the proof asks for it', async () => {
    expect((await quote()).text).not.toContain('picture not shown');
  });

  it('shows the alternatives beside what was asked, each with its own sum', async () => {
    const { lines } = await quote();
    expect(lines).toContain('As asked Three more L Back only');
    expect(lines).toContain('761.31 801.43 662.33');
    expect((await quote({ alternatives: [] })).text).not.toContain('Choose one');
  });

  it('stands on one page, A4, with the lines to sign on', async () => {
    const { pages } = await quote();
    expect(pages).toHaveLength(1);
    expect(pages[0]?.lines).toContain('accepted, name signature date');
    expect([pages[0]?.width, pages[0]?.height]).toEqual([595.28, 841.89]);
    const letter = await quote({ page: 'letter' });
    expect([letter.pages[0]?.width, letter.pages[0]?.height]).toEqual([612, 792]);
  });

  it('prints nothing of the owner’s side', async () => {
    const { text } = await quote();
    for (const own of ['411.79', '288.37', '56.26', '40.5', 'permission promised'])
      expect(text).not.toContain(own);
  });

  it('writes terms whole, their headings before them', async () => {
    const { text } = await quote();
    const words = text.replaceAll('\n', ' ');
    expect(words).toContain('Rights. You confirm that the club');
    expect(words).toContain('Lead time. Ready 10 working days after the later of');
    expect(words).toContain('How to pay. Bank transfer to 000-111-222');
  });
});

describe('sums of a paper', () => {
  it('show what a discount was taken from, and why', async () => {
    const { lines } = await quote({ discount: { amount: 1000, why: 'regular' } });
    // The subtotal has it taken already: 711.50 + 10.00 = 721.50.
    expect(lines.find((line) => line.endsWith('together 721.50'))).toBeDefined();
    expect(lines).toContain('discount: regular −10.00');
  });

  it('say that tax is inside where prices hold it', async () => {
    // 761.31 ÷ 1.07 = 711.505: 49.81 of it are tax.
    const { lines } = await quote({
      tax: { mode: 'inside', share: 0.07, rounding: 'document', exemption: null },
      sums: { subtotal: 76131, tax: 4981, total: 76131 },
    });
    expect(lines.find((line) => line.endsWith('tax 7% inside 49.81'))).toBeDefined();
    expect(lines).toContain('Total with tax, USD 761.31');
  });

  it('name the certificate where no tax is taken, and how tax is rounded where it is', async () => {
    const none = { mode: 'none', share: 0, rounding: 'document', exemption: 'R-123' } as const;
    const exempt = await quote({ tax: none, sums: { subtotal: 71150, tax: 0, total: 71150 } });
    expect(exempt.text).toContain('No tax is charged: certificate R-123.');
    expect(exempt.lines.find((line) => line.endsWith('Total, USD 711.50'))).toBeDefined();
    const byLine = await quote({ tax: { ...clubQuote.tax, rounding: 'line' } });
    expect(byLine.text).toContain('Tax is rounded for each line.');
  });

  it.each([
    ['JPY', 'ja-JP', 'Total, JPY 76,131'],
    ['KWD', 'en-GB', 'Total, KWD 76.131'],
    ['EUR', 'de-DE', 'Total, EUR 761,31'],
  ])('have the digits of %s and the marks of %s', async (currency, locale, line) => {
    expect((await quote({ currency, locale })).lines).toContain(line);
  });
});

describe('the other papers of an order', () => {
  it('a confirmation says who accepted what and when', async () => {
    const { text, lines } = await read({ kind: 'confirmation', body: clubConfirmation });
    expect(text).toContain(
      'Alex Placeholder accepted As asked of the quote, version 1, on November 28, 2026.',
    );
    expect(lines).toContain('Total, USD 761.31');
    expect(lines).toContain('deposit, to pay now 380.66');
    const asked = { ...clubConfirmation, accepted: { ...clubConfirmation.accepted, choice: '' } };
    expect((await read({ kind: 'confirmation', body: asked })).text).toContain(
      'Alex Placeholder accepted the quote, version 1, as asked on November 28, 2026.',
    );
  });

  it('a request asks for one amount', async () => {
    const { text, lines } = await read({ kind: 'paymentRequest', body: clubRequest });
    expect(lines).toContain('380.66 USD');
    expect(text).toContain('for order 26-014A, by November 30, 2026');
    expect(lines).toContain('total of the order 761.31');
    expect(text).toContain('Deposit request');
    const balance = { ...clubRequest, what: 'balance' as const };
    expect((await read({ kind: 'paymentRequest', body: balance })).text).toContain('Balance request');
  });

  it('an invoice has a number of its own, what was paid and what is to pay', async () => {
    const { text, lines } = await read({ kind: 'invoice', body: clubInvoice });
    expect(text).toContain('number 26-007A');
    expect(text).toContain('order 26-014A');
    expect(lines).toContain('paid 380.66');
    expect(lines).toContain('to pay 380.65');
    expect(text).toContain('100 % polyester, white');
  });

  it('an invoice of changes alone has a row for each, without pieces', async () => {
    const body = {
      ...clubInvoice,
      ...{ goods: [], changeIds: ['phone-4'], charges: [{ what: 'Names on the sleeve', amount: 5000 }] },
      ...{ sums: { subtotal: 5000, tax: 350, total: 5350 }, paid: 0, due: 5350 },
    };
    const { text, lines } = await read({ kind: 'invoice', body });
    expect(lines).toContain('Changes of the order USD');
    expect(lines).toContain('Names on the sleeve 50.00');
    expect(lines).toContain('tax 7% 3.50');
    expect(lines).toContain('Total, USD 53.50');
    expect(text).not.toContain('pieces');
  });

  it('a receipt says how it was paid and what is left', async () => {
    const { text, lines } = await read({ kind: 'receipt', body: clubReceipt });
    expect(text).toContain('on November 29, 2026, by bank transfer, for order 26-014A');
    expect(lines).toContain('left to pay 380.65');
  });

  it('a receipt and an invoice of more than was asked name what is beyond, and no minus', async () => {
    // 810.60 came of 761.31: 49.29 too much.
    const receipt = await read({ kind: 'receipt', body: { ...clubReceipt, paid: 81060, left: -4929 } });
    expect(receipt.lines).toContain('paid beyond the total 49.29');
    expect(receipt.text).not.toMatch(/left to pay|−/);
    const invoice = await read({ kind: 'invoice', body: { ...clubInvoice, paid: 81060, due: -4929 } });
    expect(invoice.lines).toContain('paid beyond the total 49.29');
    expect(invoice.lines.filter((line) => /^to pay|−/.test(line))).toEqual([]);
    // Nothing is left of what was paid to the coin.
    const even = await read({ kind: 'receipt', body: { ...clubReceipt, paid: 76131, left: 0 } });
    expect(even.lines).toContain('left to pay 0.00');
  });

  it('a credit note names the invoice and the reason', async () => {
    const { text, lines } = await read({ kind: 'creditNote', body: clubCredit });
    expect(text).toContain('It corrects invoice 26-007A of December 14, 2026.');
    expect(text).toContain('Reason: One shirt came with a mark.');
    expect(lines).toContain('Total credited, USD 20.33');
  });

  it('a delivery note has the pieces by size, then by person', async () => {
    const { lines } = await read({ kind: 'deliveryNote', body: clubDelivery });
    expect(lines).toContain('L 11');
    expect(lines).toContain('together 37');
    expect(lines).toContain('Nguyễn Thị Hồng 10 S');
    expect(lines).toContain('דוד 11 L');
  });

  it('a care card has no number and a card for each kind', async () => {
    const body = {
      language: 'en',
      page: 'a4',
      seller: clubQuote.seller,
      cards: ['shirt', 'mug'],
    } as const;
    const { text, lines } = await read({ kind: 'careCard', body });
    expect(lines[0]).toBe('Caring for your shirt Caring for your mug');
    expect(text).not.toMatch(/26-\d/);
  });
});

describe('a proof', () => {
  const proof = (changes: Partial<typeof clubProof> = {}) =>
    read({ kind: 'proof', body: { ...clubProof, ...changes } });

  it('has a line of 100 mm and asks for no scaling', async () => {
    const { pages, preferences } = await proof();
    // 100 mm are 283.46 points.
    expect(pages[0]?.across.some((width) => Math.abs(width - 283.46) < 0.01)).toBe(true);
    expect(preferences).toMatchObject({ PrintScaling: 'None' });
  });

  it.each(['a4', 'letter'] as const)('has its drawings over the whole width of %s', async (page) => {
    // Names to print make it long, so that it is set closer.
    for (const names of [[], Array.from({ length: 24 }, (_, at) => `Player ${at}`)]) {
      const { pages } = await proof({ page, names });
      const at = (caption: string) => pages[0]?.texts.find(({ text }) => text === caption);
      const middle = (caption: string) => (at(caption)?.x ?? 0) + (at(caption)?.width ?? 0) / 2;
      // As far from the left edge as the other from the right.
      expect(middle('back')).toBeCloseTo((pages[0]?.width ?? 0) - middle('front'), 1);
    }
  });

  it('names the version of each picture and every name to print, once', async () => {
    const names = Array.from({ length: 500 }, (_, at) => `Player ${at + 1}.`);
    const { text } = await proof({ names });
    expect(text).toContain('Back: Hill path picture, version 1');
    expect(text).toContain('Left chest: Club crest, version 2');
    for (const name of names) expect(text.split(name)).toHaveLength(2);
  });

  it('says again what is approved where that stands on an earlier page', async () => {
    const kinds = (count: number) =>
      Array.from({ length: count }, (_, at) => ({
        ...clubProof.goods[0],
        name: `Kind ${at + 1}`,
      })) as typeof clubProof.goods;
    const { pages } = await proof({ goods: kinds(3) });
    expect(pages.length).toBeGreaterThan(1);
    const last = pages.at(-1)?.lines.join('\n') ?? '';
    expect(last).toContain('signature');
    for (const kind of [1, 2, 3]) expect(last).toContain(`37 × Kind ${kind}`);
    expect(last.split('Left chest: Club crest, version 2').length).toBeGreaterThan(3);
    // One kind of goods stands on one page with the answers.
    const one = await proof();
    expect(one.pages).toHaveLength(1);
    expect(one.text.split('Club crest, version 2')).toHaveLength(2);
  });

  it('says where a picture cannot be shown, and names its place', async () => {
    const picture = { fileId: 'f'.repeat(64), fileName: 'hill.png' };
    const goods = [
      { ...clubProof.goods[0], prints: clubGoods.prints.map((print) => ({ ...print, picture })) },
    ] as typeof clubProof.goods;
    const { lost, bytes } = await writtenPaper({ kind: 'proof', body: { ...clubProof, goods } });
    expect(lost).toEqual([picture.fileId]);
    // Once in its place, and once in the words.
    expect((await readPages(bytes)).text.split('Hill path picture')).toHaveLength(3);
    expect((await proof()).text).toContain('picture not shown');
  });
});
