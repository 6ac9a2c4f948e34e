import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleQuote } from '@/app/_commands/exampleQuote';
import { quoteArguments } from '@/app/_commands/quoteArguments';
import { answerQuote } from '@/app/_requests/answerQuote';
import { orderOfCopy } from '@/app/_requests/orderOfCopy';
import { readPages } from '@/tests/fixtures/readPages';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const EXAMPLE = 'public/examples/club-quote.json';
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'quote-'));
});
afterAll(() => rm(folder, { recursive: true }));

interface Run {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

const run = (...words: readonly string[]): Promise<Run> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      ['node_modules/tsx/dist/cli.mjs', 'app/_commands/quote.ts', ...words],
      { cwd: root, maxBuffer: 1e8 },
      (error, output, errors) => resolve({ code: Number(error?.code ?? 0), output, errors }),
    );
  });

/** The example with its order changed, as the command reads it. */
async function orderWith(change: object) {
  const example = exampleQuote();
  const drafts = example.drafts.map((one) =>
    one.draft.kind === 'order'
      ? { ...one, draft: { ...one.draft, body: { ...bodyOf(one), ...change } } }
      : one,
  );
  const bytes = new TextEncoder().encode(JSON.stringify({ ...example, drafts }));
  return orderOfCopy(bytes, { file: 'order.json', orderId: null, day: example.asOf });
}

const bodyOf = ({ draft }: { readonly draft: { readonly body: unknown } }): object =>
  typeof draft.body === 'object' && draft.body !== null ? draft.body : {};

async function answerTo(change: object) {
  const read = await orderWith(change);
  if (read.kind === 'unusable') throw new Error(read.why);
  return answerQuote(read.asked, exampleQuote().asOf);
}

describe('npm run quote', () => {
  it('quotes the worked order of a carried file', async () => {
    const { code, output, errors } = await run(EXAMPLE);
    expect([code, errors]).toEqual([0, '']);
    const answer = JSON.parse(output);
    const each = (size: string, quantity: number, price: number) => ({
      ...{ what: 'Club shirt', size, quantity },
      ...{ each: price, total: quantity * price },
    });
    expect(answer).toMatchObject({
      number: '26-014A',
      lines: [
        each('S', 4, 1900),
        each('M', 9, 1900),
        each('L', 11, 1900),
        each('XL', 8, 1900),
        each('2XL', 4, 2050),
        each('3XL', 1, 2150),
      ],
      ...{ subtotal: 71_150, discount: 0, tax: 4981, total: 76_131, deposit: 38_066, balance: 38_065 },
      validUntil: '2026-12-09',
      // Four working days before the bench work that ends before the event of 11 December.
      dates: { orderBlanksBy: '2026-11-30', approveBy: '2026-11-30', ready: '2026-12-11' },
    });
    expect(answer.alternatives[0]).toMatchObject({ subtotal: 74_900, tax: 5243, total: 80_143 });
    expect(answer.alternatives[0].sizes[2]).toEqual({ size: 'L', quantity: 14 });
    expect(answer.alternatives.map(({ label }: { label: string }) => label)).toEqual([
      '40 × Club shirt',
      'Without Chest badge',
    ]);
  });

  it('ends with 2 where something stands in the way, and says what', async () => {
    const file = join(folder, 'nobody.json');
    const text = await readFile(join(root, EXAMPLE), 'utf8');
    await writeFile(file, text.replace('"customerId": "ramblers-club"', '"customerId": null'));
    const { code, output, errors } = await run(file);
    expect(code).toBe(2);
    expect(JSON.parse(output)).toMatchObject({ number: '26-014A', obstacles: [{ kind: 'noCustomer' }] });
    expect(errors).toMatch(/^Nobody is named as the customer, .*\n$/);
  });

  it('ends with 1 where the file cannot be used, and says why', async () => {
    const file = join(folder, 'broken.json');
    await writeFile(file, '{ "format": ');
    expect(await run(file)).toMatchObject({
      code: 1,
      output: '',
      errors: expect.stringMatching(/is not JSON/),
    });
    expect(await run('public/examples/club-order.json')).toMatchObject({
      code: 1,
      errors: expect.stringMatching(/is no copy made here\. .* Nothing was quoted\.\n$/),
    });
  });
});

describe('npm run quote with --pdf', () => {
  /** The example with some of its documents changed, as text. */
  const changed = (changes: Readonly<Record<string, object>>) => {
    const example = exampleQuote();
    const drafts = example.drafts.map((one) => ({
      ...one,
      draft: { ...one.draft, body: { ...bodyOf(one), ...changes[one.draft.kind] } },
    }));
    return JSON.stringify({ ...example, drafts });
  };

  it('writes the quote of the worked order on Letter, as its answer says it', async () => {
    const pdf = join(folder, 'letter.pdf');
    const { code, output, errors } = await run(EXAMPLE, '--pdf', pdf);
    expect([code, errors]).toEqual([0, '']);
    expect(JSON.parse(output)).toMatchObject({ subtotal: 71_150, tax: 4981, total: 76_131 });
    const { pages, lines, text } = await readPages(new Uint8Array(await readFile(pdf)));
    expect([pages[0]?.width, pages[0]?.height]).toEqual([612, 792]);
    for (const line of [
      'S to XL 32 19.00 608.00',
      '2XL 4 20.50 82.00',
      '3XL 1 21.50 21.50',
      'tax 7% 49.81',
      'Total, USD 761.31',
      'deposit 50%, to pay now 380.66',
      'balance 380.65',
      // As asked, three more in L, the back alone: 619.00 × 1.07 = 662.33.
      '761.31 801.43 662.33',
    ])
      expect(lines).toContain(line);
    for (const told of [
      '26-014A, version 1',
      'Exampleton Ramblers Club',
      'valid until December 9, 2026',
      'approve by November 30, 2026',
      'ready December 11, 2026',
      'without tax 711.50',
      '40 × Club shirt',
      'To pay now: 380.66 USD.',
    ])
      expect(text.replaceAll('\n', ' ')).toContain(told);
    expect(text).not.toContain('411.79');
  });

  it('writes it on A4 where the workshop prints on that', async () => {
    const [file, pdf] = [join(folder, 'a4.json'), join(folder, 'a4.pdf')];
    const papers = { page: 'a4', words: [], terms: [], ownTerms: [] };
    await writeFile(file, changed({ workshop: { papers } }));
    expect(await run(file, '--pdf', pdf)).toMatchObject({ code: 0, errors: '' });
    const { pages, lines } = await readPages(new Uint8Array(await readFile(pdf)));
    expect([pages[0]?.width, pages[0]?.height]).toEqual([595.28, 841.89]);
    expect(lines).toContain('Total, USD 761.31');
  });

  it('says which letters it has no type for, and writes nothing', async () => {
    const [file, pdf] = [join(folder, 'letters.json'), join(folder, 'letters.pdf')];
    await writeFile(file, changed({ order: { name: 'ⵜⵉⵊⵉⵔⵜ' } }));
    const { code, errors } = await run(file, '--pdf', pdf);
    expect(code).toBe(1);
    expect(errors).toMatch(/was not written: no type here has ⵜ \(U\+2D5C\), /);
    await expect(readFile(pdf)).rejects.toThrow(/ENOENT/);
  });

  it('says where it cannot write', async () => {
    const { code, errors } = await run(EXAMPLE, '--pdf', join(folder, 'no', 'such.pdf'));
    expect(code).toBe(1);
    expect(errors).toMatch(/such\.pdf cannot be written: /);
  });
});

describe('the order of a file', () => {
  it('has lines for what stands beside the pieces, and all of them less the discount are the subtotal', async () => {
    const quoted = await answerTo({
      charges: [{ id: 'rush', kind: 'rush', what: 'Rush', amount: 50 }],
      discount: { kind: 'share', share: 0.1, why: 'club' },
    });
    if (quoted.kind !== 'quoted') throw new Error(JSON.stringify(quoted.obstacles));
    const { lines, discount, subtotal } = quoted.answer;
    expect(lines.at(-1)).toEqual({ what: 'Rush', size: null, quantity: 1, each: 5000, total: 5000 });
    // A tenth of 761.50.
    expect(discount).toBe(7615);
    expect(lines.reduce((sum, { total }) => sum + total, 0) - discount).toBe(subtotal);
  });

  it('that cannot be read is told with the field that is wrong', async () => {
    expect(await orderWith({ depositShare: 1.5 })).toEqual({
      kind: 'unusable',
      why: expect.stringMatching(
        /^order\.json cannot be used\.\norder club-enquiry: Deposit share .* at most 1/,
      ),
    });
  });

  it('is not numbered where nothing says its number', async () => {
    const { entries: _, counts, ...example } = exampleQuote();
    const bytes = new TextEncoder().encode(
      JSON.stringify({ ...example, counts: { ...counts, entries: 0 }, entries: [] }),
    );
    const read = await orderOfCopy(bytes, { file: 'order.json', orderId: null, day: example.asOf });
    expect(read).toMatchObject({ kind: 'order', note: null, asked: { orderNumber: null } });
  });

  it('is named where a copy holds several', async () => {
    const { what: _, ...example } = exampleQuote();
    const [first] = example.drafts;
    const drafts = [...example.drafts, { ...first, draft: { ...first?.draft, id: 'second' } }];
    const bytes = new TextEncoder().encode(
      JSON.stringify({
        ...example,
        what: 'everything',
        counts: { ...example.counts, drafts: drafts.length },
        drafts,
      }),
    );
    const read = (orderId: string | null) =>
      orderOfCopy(bytes, { file: 'all.json', orderId, day: example.asOf });
    expect(await read(null)).toEqual({
      kind: 'unusable',
      why: expect.stringMatching(/^all\.json holds 2 orders: name one of them\.\n--order club-enquiry /),
    });
    expect(await read('second')).toMatchObject({ kind: 'order', asked: { orderId: 'second' } });
  });
});

describe('the words of the command', () => {
  it('name a file, perhaps an order and a paper', () => {
    expect(quoteArguments(['a.json', '--pdf', 'a.pdf', '--order', 'b'])).toEqual({
      ...{ kind: 'usable', file: 'a.json', orderId: 'b', pdf: 'a.pdf' },
    });
    expect(quoteArguments(['a.json'])).toMatchObject({ orderId: null, pdf: null });
  });

  it.each([
    [[], /^Name one file/],
    [['a', 'b'], /^Name one file/],
    [['a', '--pfd', 'x'], /^--pfd is not known/],
    [['a', '--pdf'], /^--pdf needs a value/],
    [['a', '--pdf', 'x', '--pdf', 'y'], /^--pdf is given twice/],
  ])('%j are refused in a sentence', (words, why) => {
    expect(quoteArguments(words)).toEqual({ kind: 'unusable', why: expect.stringMatching(why) });
  });
});
