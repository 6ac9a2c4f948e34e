import { readFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { describe, expect, inject, test } from 'vitest';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { post as answeredInTime } from '@/tests/e2e/harness/post';

const example = async () => JSON.parse(await readFile('public/examples/club-order.json', 'utf8'));

const post = (body: unknown, headers: Record<string, string> = {}): Promise<Response> =>
  fetch(`${inject('baseUrl')}/api/price`, { method: 'POST', body: JSON.stringify(body), headers });

/** The same, asked again while the server works on what other tests want of it. */
const answered = (body: unknown): Promise<Response> => answeredInTime(JSON.stringify(body));

describe('a request that wants too much', () => {
  test('eight thousand broken artworks are refused, and an answer costs less than looking at each', async () => {
    const request = await example();
    for (let index = 0; index < 8_000; index += 1) request.artworks[`more${index}`] = 1;
    await answered(await example());
    // Of several times the shortest: what else the machine does only adds to each.
    let shortestMs = Number.POSITIVE_INFINITY;
    for (let time = 0; time < 3; time += 1) {
      const start = performance.now();
      const { status } = await answered(request);
      shortestMs = Math.min(shortestMs, performance.now() - start);
      expect(status).toBe(422);
    }
    // It takes a few milliseconds; it used to take a minute.
    expect(shortestMs).toBeLessThan(1_000);
  });

  test('a job too heavy to work out is stopped, while others are answered', async () => {
    const request = await example();
    const heavy = { ...request, job: heavyJob(jobSchema.parse(request.job)) };
    // The second thread may still be starting the first time.
    await expect
      .poll(
        async () => {
          const state = { isDone: false };
          const answer = post(heavy).finally(() => Object.assign(state, { isDone: true }));
          const [small, page] = [await post(request), await fetch(inject('baseUrl'))];
          const meanwhile = !state.isDone;
          const response = await answer;
          const { error } = await response.json();
          return [small.status, page.status, meanwhile, response.status, error];
        },
        // A thread is ended 2.5 s after this answer, and on a slow machine it takes many times the two seconds that are
        // usual until another is there; asked before, the one thread left would be ended in its turn, and so on.
        { timeout: 200_000, interval: 20_000 },
      )
      .toEqual([200, 200, true, 503, expect.stringMatching(/stopped.*Send fewer lines/s)]);
    expect((await answered(request)).status).toBe(200);
  });
});

describe('a page of another site', () => {
  test('can have nothing priced', async () => {
    const response = await post(await example(), { 'Sec-Fetch-Site': 'cross-site' });
    expect(response.status).toBe(403);
    expect((await response.json()).error).toMatch(/another site/);
  });
});

describe('an address names the methods it takes', () => {
  test.each([
    ['GET', '/api/price', 405, 'OPTIONS, POST'],
    ['PUT', '/api/price', 405, 'OPTIONS, POST'],
    ['TRACE', '/api/price', 405, 'OPTIONS, POST'],
    ['OPTIONS', '/api/price', 204, 'OPTIONS, POST'],
    ['POST', '/api/schema', 405, 'GET, HEAD, OPTIONS'],
    ['OPTIONS', '/api/schema', 204, 'GET, HEAD, OPTIONS'],
    ['TRACE', '/', 405, 'GET, HEAD'],
    ['POST', '/jobs', 405, 'GET, HEAD'],
  ])('%s %s', async (method, path, status, allow) => {
    const answer = await raw(`${method} ${path} HTTP/1.1`);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('allow')).toBe(allow);
    if (status === 405) expect(answer.body).toMatch(/This address does not take requests of this kind\./);
    expectSecurityHeaders(answer);
  });
});

describe('what cannot be read is refused in a sentence, with the security headers', () => {
  test.each([
    ['a percent sign alone', 'GET /% HTTP/1.1', [], 400],
    ['a letter cut in two', 'GET /jobs/%E0%A4%A HTTP/1.1', [], 400],
    ['a letter of no alphabet', 'GET /jobs/%FF HTTP/1.1', [], 400],
    ['an address that leads elsewhere', 'GET //elsewhere.invalid/ HTTP/1.1', [], 404],
    ['no address', 'OPTIONS * HTTP/1.1', [], 400],
    ['a method nobody knows', 'NONSENSE / HTTP/1.1', [], 400],
    ['no request at all', 'nonsense', [], 400],
    ['a router state that is none', 'GET / HTTP/1.1', ['RSC: 1', 'Next-Router-State-Tree: garbage'], 400],
    ['an empty router state', 'GET / HTTP/1.1', ['RSC: 1', 'Next-Router-State-Tree: %5B%5D'], 400],
    ['headers without end', 'GET / HTTP/1.1', [`X-Long: ${'x'.repeat(20_000)}`], 431],
  ])('%s', async (_, line, headers, status) => {
    const answer = await raw(line, headers);
    expect(answer.status).toBe(status);
    expect(answer.body).toMatch(/[A-Z][a-z ].*\./);
    expectSecurityHeaders(answer);
  });
});

// Helpers

interface RawAnswer {
  readonly status: number;
  readonly headers: ReadonlyMap<string, string>;
  readonly body: string;
}

/** Sends what no client of HTTP would send. */
function raw(requestLine: string, headers: readonly string[] = []): Promise<RawAnswer> {
  const { hostname, port } = new URL(inject('baseUrl'));
  const lines = [requestLine, `Host: ${hostname}:${port}`, 'Connection: close', ...headers, '', ''];
  return new Promise((resolve, reject) => {
    let text = '';
    const socket = connect(Number(port), hostname, () => socket.write(lines.join('\r\n')));
    socket.on('data', (part) => {
      text += part.toString('utf8');
    });
    socket.on('error', reject);
    socket.on('close', () => {
      const [head = '', ...body] = text.split('\r\n\r\n');
      const [first = '', ...rest] = head.split('\r\n');
      resolve({
        status: Number(first.split(' ')[1]),
        headers: new Map(
          rest.map((line) => [line.split(':')[0]?.toLowerCase() ?? '', line.replace(/^[^:]+: */, '')]),
        ),
        body: body.join('\r\n\r\n'),
      });
    });
  });
}

function expectSecurityHeaders({ headers }: RawAnswer): void {
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('x-frame-options')).toBe('DENY');
  expect(headers.get('referrer-policy')).toBe('no-referrer');
  expect(headers.get('permissions-policy')).toContain('camera=()');
  expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
  expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
  expect(headers.get('content-security-policy')).toContain("default-src 'none'");
}

/** Twelve lines of four placements, each with a print of its own for every size, all on shared sheets. */
function heavyJob(job: Job): Job {
  const [line] = job.lines;
  if (line === undefined) throw new Error('the example has no line');
  const sizes = line.quantities.map(({ size }) => size);
  const lines = Array.from({ length: 12 }, (_, at) => ({
    ...line,
    id: `line${at}`,
    quantities: sizes.map((size, index) => ({ size, quantity: 200 + ((at * 7 + index * 5) % 11) })),
    orderedQuantity: null,
    placements: Array.from({ length: 4 }, (_, place) => ({
      ...(line.placements[place % 2] ?? line.placements[0]),
      id: `placement${at}x${place}`,
      prints: sizes.map((size, index) => ({
        sizes: [size],
        widthMm: 50 + place * 7 + index * 4 + at,
        heightMm: 50 + place * 6 + index * 3 + at,
      })),
    })),
  }));
  return jobSchema.parse({ ...job, gang: 'together', lines });
}
