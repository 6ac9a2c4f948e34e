import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerText } from '@/app/_requests/answerText';
import { type PriceText, postPrice } from '@/app/_requests/postPrice';
import { cases } from '@/tests/tools/cases';

const examples = ['club-order', 'fair-shirts', 'fair-mugs'].map((name) =>
  readFileSync(`public/examples/${name}.json`, 'utf8'),
);

/** As the server does it, but in this thread. */
const here: PriceText = async (text, today) => ({ kind: 'answered', answer: answerText(text, today) });

const ask = (body: BodyInit, headers: Record<string, string> = {}, price = here): Promise<Response> =>
  postPrice(new Request('http://127.0.0.1/api/price', { method: 'POST', body, headers }), price);

describe('POST /api/price', () => {
  it.each(['cross-site', 'same-site', 'nonsense'])('refuses a page of another site: %s', async (site) => {
    const response = await ask(examples[0] ?? '', { 'Sec-Fetch-Site': site, 'Content-Type': 'text/plain' });
    expect(response.status).toBe(403);
    expect((await response.json()).error).toMatch(/page of another site.*Nothing was priced\./);
  });

  it.each<Record<string, string>>([
    {},
    { 'Sec-Fetch-Site': 'same-origin' },
    { 'Sec-Fetch-Site': 'none' },
    { 'Content-Type': 'application/x-www-form-urlencoded' },
  ])('answers programs and its own pages: %j', async (headers) => {
    expect((await ask(examples[0] ?? '', headers)).status).toBe(200);
  });

  it.each([
    ['tooLong', 503, /longer than 3 seconds.*stopped.*fewer lines.*npm run/s, null],
    ['busy', 503, /working on other jobs.*in a second/, '1'],
    ['failed', 500, /failed at this request/, null],
  ] as const)('says why there is no answer: %s', async (kind, status, sentence, retryAfter) => {
    const response = await ask('{}', {}, async () => ({ kind }));
    expect(response.status).toBe(status);
    expect(response.headers.get('retry-after')).toBe(retryAfter);
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect((await response.json()).error).toMatch(sentence);
  });

  it('says so when the request breaks off', async () => {
    const broken = new ReadableStream({ start: (stream) => stream.error(new Error('gone')) });
    const init = { method: 'POST', body: broken, duplex: 'half' };
    const response = await postPrice(new Request('http://127.0.0.1/', init), here);
    expect(response.status).toBe(400);
    expect((await response.json()).error).toMatch(/broke off/);
  });

  it('takes a body of a million bytes and refuses one more, said beforehand or not', async () => {
    const body = (bytes: number) => ' '.repeat(bytes);
    expect((await ask(body(1_000_000))).status).toBe(400);
    expect((await ask(body(1_000_001))).status).toBe(413);
    expect((await ask('', { 'Content-Length': '1000001' })).status).toBe(413);
  });

  it('answers brackets without end like any other text that is no request', async () => {
    const deep = `${'['.repeat(400_000)}${']'.repeat(400_000)}`;
    expect((await ask(deep)).status).toBe(422);
    expect((await ask((examples[0] ?? '').replace('"asOf":', `"deep":${deep},"asOf":`))).status).toBe(422);
  });

  it('answers whatever is sent: a documented status, findings in words or a sentence, and not too many', async () => {
    await fc.assert(
      fc.asyncProperty(anyBody, async (body) => {
        const response = await ask(body);
        const answer = await response.json();
        expect([200, 400, 422]).toContain(response.status);
        if (response.status === 400) {
          expect(answer.error).toMatch(/not JSON/);
          return;
        }
        expect(answer.findings.length).toBeLessThan(1_000);
        if (response.status === 422) expect(answer.findings.length).toBeLessThan(102);
        for (const { message, detail } of answer.findings) {
          expect(`${message} ${detail}`).toMatch(/\w.*[.”?]$/s);
          expect(`${message} ${detail}`.length).toBeLessThan(3_000);
        }
      }),
      cases(300),
    );
  }, 120_000);
});

// Helpers

type Json = ReturnType<typeof JSON.parse>;

const hostile = fc.constantFrom<Json>(
  ...[null, true, '', 'x'.repeat(600), '__proto__', 'constructor', '(((((1', '\u0000', '\ud800', '=1+1'],
  ...[0, -1, 1.5, 1e308, -0, 1e-320, 2 ** 53, '2026-02-30', [], {}, [[[[]]]], { __proto__: 1 }],
);

/** One change somewhere in an example: a field taken out, doubled, or replaced by something that was not meant. */
const mutation = fc.record({
  way: fc.array(fc.nat(), { minLength: 1, maxLength: 9 }),
  how: fc.constantFrom('replace', 'remove', 'add', 'swap'),
  value: fc.oneof(
    { weight: 3, arbitrary: hostile },
    { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
    { weight: 1, arbitrary: fc.double() },
  ),
});

const mutated = fc
  .tuple(fc.constantFrom(...examples), fc.array(mutation, { minLength: 1, maxLength: 4 }))
  .map(([text, mutations]) => {
    const document = JSON.parse(text);
    for (const one of mutations) mutate(document, one);
    return JSON.stringify(document);
  });

const cut = fc
  .tuple(fc.constantFrom(...examples), fc.nat(20_000))
  .map(([text, length]) => text.slice(0, length));

const anyBody = fc.oneof(
  { weight: 8, arbitrary: mutated },
  { weight: 1, arbitrary: fc.json() },
  { weight: 1, arbitrary: cut },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);

function mutate(document: Json, { way, how, value }: { way: readonly number[]; how: string; value: Json }) {
  let parent = document;
  let key = '';
  for (const step of way) {
    const inner = key === '' ? document : Reflect.get(parent, key);
    if (typeof inner !== 'object' || inner === null || Object.keys(inner).length === 0) break;
    parent = inner;
    const keys = Object.keys(inner);
    key = keys[step % keys.length] ?? '';
  }
  if (how === 'remove') Reflect.deleteProperty(parent, key);
  else if (how === 'add') Reflect.set(parent, Array.isArray(parent) ? parent.length : 'added', value);
  else if (how === 'swap') Reflect.set(parent, key, structuredClone(parent));
  else Reflect.set(parent, key, value);
}
