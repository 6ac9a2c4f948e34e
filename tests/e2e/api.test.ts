import { readFile } from 'node:fs/promises';
import { expect, inject, test } from 'vitest';
import { post } from '@/tests/e2e/harness/post';

const example = async (name: string): Promise<Record<string, unknown>> =>
  JSON.parse(await readFile(`public/examples/${name}.json`, 'utf8'));

test('the API prices the club order to the figures worked by hand', async () => {
  const response = await post(JSON.stringify(await example('club-order')));
  expect(response.status).toBe(200);
  const answer = await response.json();
  expect(answer.costSheet.fullCost).toBeCloseTo(411.79, 1);
  expect(answer.prices.targetTotal).toBeCloseTo(602.05, 1);
  // The sums choose six breaks from one piece on; each stands in six sizes.
  const starts: readonly { from: number; size: string }[] = answer.prices.table;
  expect(starts).toHaveLength(36);
  expect(new Set(starts.map(({ from }) => from)).size).toBe(6);
  expect(new Set(starts.map(({ size }) => size))).toEqual(new Set(['S', 'M', 'L', 'XL', '2XL', '3XL']));
  expect(answer.findings.map(({ id }: { id: string }) => id).sort()).toEqual(
    ['ART-01', 'ART-04', 'ART-13', 'ART-14', 'LAY-08', 'PLC-07', 'REC-12', 'SUB-12', 'TIM-02'].sort(),
  );
  expect(answer.findings.every(({ message }: { message: string }) => message.length > 10)).toBe(true);
});

test.each([
  ['fair-shirts', 'fern', 6.543],
  ['fair-shirts', 'lighthouse', 6.587],
  ['fair-shirts', 'otter', 6.512],
  ['fair-shirts', 'star-map', 6.609],
  ['fair-mugs', 'fern', 3.918],
])('one more piece of %s, %s costs %d', async (file, lineId, cost) => {
  const answer = await (await post(JSON.stringify(await example(file)))).json();
  const size = file === 'fair-mugs' ? '11 oz' : 'L';
  const found = answer.costSheet.cases.find(
    (one: { lineId: string; size: string }) => one.lineId === lineId && one.size === size,
  );
  expect(found.incrementalCost).toBeCloseTo(cost, 2);
});

test.each([
  ['nothing', ''],
  ['half a document', '{"job": {'],
  ['a word', 'hello'],
])('%s is answered with 400 and a reason', async (_, body) => {
  const response = await post(body);
  expect(response.status).toBe(400);
  expect((await response.json()).error).toMatch(/not JSON/);
});

test.each([
  ['a list', '[]'],
  ['a number', '3'],
  ['an empty object', '{}'],
])('%s is answered with 422 and findings in words', async (_, body) => {
  const response = await post(body);
  expect(response.status).toBe(422);
  const { findings } = await response.json();
  expect(findings.length).toBeGreaterThan(0);
  expect(findings[0].message).toMatch(/\w+ .*\./);
});

test('an unknown key is named, and nothing is priced', async () => {
  const request = { ...(await example('club-order')), widthCm: 3 };
  const response = await post(JSON.stringify(request));
  expect(response.status).toBe(422);
  expect(JSON.stringify(await response.json())).toContain('widthCm');
});

test('a request larger than a job is answered with 413', async () => {
  const response = await post(`"${'x'.repeat(1_100_000)}"`);
  expect(response.status).toBe(413);
});

test('the schema describes the request and every document, and refuses unknown keys', async () => {
  const response = await fetch(`${inject('baseUrl')}/api/schema`);
  const schemas = await response.json();
  expect(Object.keys(schemas).sort()).toEqual([
    'artwork',
    'blank',
    'blankFault',
    'buyingList',
    'confirmation',
    'consumable',
    'creditNote',
    'customer',
    'deliveryNote',
    'expense',
    'faultClaim',
    'goodsIn',
    'hours',
    'invoice',
    'job',
    'order',
    'orderEvent',
    'payment',
    'paymentRequest',
    'payout',
    'pressTest',
    'pressing',
    'proof',
    'quote',
    'rateTaken',
    'receipt',
    'request',
    'run',
    'runActual',
    'runStandard',
    'runStep',
    'sheetsPrinted',
    'supplier',
    'supplyOrder',
    'washCheck',
    'workshop',
  ]);
  expect(schemas.quote.properties.alternatives.maxItems).toBe(2);
  expect(schemas.run.additionalProperties).toBe(false);
  expect(schemas.supplyOrder.required).toContain('rows');
  expect(schemas.pressing.properties.result.enum).toEqual(['good', 'second', 'scrap']);
  expect(schemas.job.additionalProperties).toBe(false);
  expect(schemas.request.properties.workshop.properties.rates.properties.wage).toBeDefined();
});

test('the address that is asked for health says that the server answers, and is kept nowhere', async () => {
  const response = await fetch(`${inject('baseUrl')}/api/health`);
  expect(response.status).toBe(200);
  expect(response.headers.get('cache-control')).toBe('no-store');
  expect(await response.json()).toEqual({ status: 'ok' });
  const refused = await fetch(`${inject('baseUrl')}/api/health`, { method: 'POST' });
  expect(refused.status).toBe(405);
  expect(refused.headers.get('allow')).toBe('GET, HEAD, OPTIONS');
});
