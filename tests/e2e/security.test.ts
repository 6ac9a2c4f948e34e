import { expect, inject, test } from 'vitest';
import { strangerScript } from '@/app/_firstScreen/strangerScript';
import { shells } from '@/app/_offline/shells';
import { axe } from '@/tests/e2e/harness/axe';
import { openPage } from '@/tests/e2e/harness/openPage';
import { expectProblem } from '@/tests/e2e/harness/problems';
import { served } from '@/tests/e2e/harness/served';
import { shot } from '@/tests/e2e/harness/shot';

const plain = [
  ['x-content-type-options', 'nosniff'],
  ['x-frame-options', 'DENY'],
  ['referrer-policy', 'no-referrer'],
  ['permissions-policy', expect.stringContaining('camera=()')],
  ['cross-origin-opener-policy', 'same-origin'],
  ['cross-origin-resource-policy', 'same-origin'],
  ['x-powered-by', null],
] as const;

test.each(['/', '/no-such-page', '/api/no-such-call', '/_next/static/no-such-file.js'])(
  '%s answers with the security headers',
  async (path) => {
    const { headers } = await answer(path);
    for (const [name, value] of plain) expect(headers.get(name), name).toEqual(value);
    expect(headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(headers.get('content-security-policy')).not.toContain('unsafe');
  },
);

test('a built script answers with the security headers and the policy that binds workers', async () => {
  const [script = ''] = (await (await answer('/')).text()).match(/\/_next\/static\/[^"]+\.js/) ?? [];
  const { headers, status } = await answer(script);
  expect(status).toBe(200);
  for (const [name, value] of plain) expect(headers.get(name), name).toEqual(value);
  expect(headers.get('content-security-policy')).toContain("connect-src 'self'");
});

const ASKED_FOR = /\\"c\\":\[[^\]]*\]/;

/** Addresses of which one page stands for any document. */
const ofAnyDocument = shells.map(({ address }) => address).filter((address) => address.includes(':id'));

test.each(ofAnyDocument)(
  'every address like %s is answered with the same page, byte for byte but for the nonce and the address itself',
  async (address) => {
    const answers = ['club-order', 'x', 'a%20b%C3%A4', 'one'].map(async (id) => {
      const response = await answer(address.replace(':id', id));
      const [, nonce = 'none'] =
        /'nonce-([^']+)'/.exec(response.headers.get('content-security-policy') ?? '') ?? [];
      // The framework writes down what was asked for; a page goes by the address bar.
      expect(response.headers.get('x-middleware-rewrite')).toBe(
        id === 'one' ? null : address.replace(':id', 'one'),
      );
      return (await response.text()).replaceAll(nonce, 'NONCE').replace(ASKED_FOR, 'ASKED FOR');
    });
    expect(new Set(await Promise.all(answers)).size).toBe(1);
  },
);

test('the service worker is kept by nobody on the way and reaches no other host', async () => {
  const { headers, status } = await answer('/sw.js');
  expect(status).toBe(200);
  for (const [name, value] of plain) expect(headers.get(name), name).toEqual(value);
  expect(headers.get('content-type')).toContain('text/javascript');
  expect(headers.get('cache-control')).toBe('no-cache');
  expect(headers.get('content-security-policy')).toBe(
    "default-src 'none'; script-src 'self'; connect-src 'self'; base-uri 'none'; frame-ancestors 'none'",
  );
});

test('each answer carries a nonce of its own, on the policy and on every script tag', async () => {
  const nonces = new Set<string>();
  for (const path of ['/', '/', '/no-such-page']) {
    const response = await answer(path);
    const [, nonce = 'none'] =
      /'nonce-([^']+)'/.exec(response.headers.get('content-security-policy') ?? '') ?? [];
    // The one that stands in the page word for word is known by its hash.
    const text = (await response.text()).replace(
      /<script data-language="[^"]*">([^<]*)<\/script>/,
      (tag, script) => (script === strangerScript ? '' : tag),
    );
    const scripts = text.match(/<script[^>]*>/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((tag) => !tag.includes(`nonce="${nonce}"`))).toEqual([]);
    nonces.add(nonce);
  }
  expect(nonces.size).toBe(3);
});

test.each([
  [1280, 'light'],
  [390, 'dark'],
] as const)(
  'an unknown address is answered with a page that works, %s px wide and %s',
  async (width, scheme) => {
    const page = await openPage({ path: '/no-such-page', width, scheme });
    await expectProblem(/status of 404 .*no-such-page/);
    await axe(page);
    await shot(page, 'not-found');
  },
);

test('an unknown address is answered with status 404', async () => {
  expect((await answer('/no-such-page')).status).toBe(404);
});

test('a script that slips into the page does not run', async () => {
  const page = await openPage();
  const smuggled = `<script>window.slipped = 1</script><img alt="" src="data:," onerror="window.slipped = 2">`;
  await page.route('/', async (route) => {
    const response = await served(route);
    const body = (await response.text()).replace('</body>', `${smuggled}</body>`);
    expect(body).toContain(smuggled);
    await route.fulfill({ response, body });
  });
  await page.reload();
  await expectProblem(/content policy: script-src-elem inline/);
  await expectProblem(/content policy: script-src-attr inline/);
  await expectProblem(/console: .*Content Security Policy/);
  expect(await page.evaluate(() => 'slipped' in window)).toBe(false);
});

test('a script added by a script may neither be inline nor come from another host', async () => {
  const page = await openPage();
  await page.evaluate(() => {
    const inline = document.createElement('script');
    inline.textContent = 'window.slipped = 1';
    const foreign = document.createElement('script');
    foreign.src = 'http://elsewhere.invalid/script.js';
    document.body.append(inline, foreign);
  });
  await expectProblem(/content policy: script-src-elem inline/);
  await expectProblem(/request to another host/);
  await expectProblem(/content policy: script-src-elem http:\/\/elsewhere\.invalid/);
  await expectProblem(/console: .*Content Security Policy/);
  expect(await page.evaluate(() => 'slipped' in window)).toBe(false);
});

test('a worker starts, and can neither evaluate text nor reach another host', async () => {
  const page = await openPage();
  const script = await page.evaluate(() => document.querySelector('script[src]')?.getAttribute('src') ?? '');
  // The headers of a built file with a body that tells what it may do.
  await page.route(script, async (route) => {
    const response = await served(route);
    const body = `onmessage = async () => postMessage(await (${confess})())`;
    await route.fulfill({ response, body });
  });
  // Not the page's own, which may start only now.
  const started = page.waitForEvent('worker', (one) => one.url().endsWith(script));
  const worker = await page.evaluateHandle((url) => new Worker(url, { type: 'module' }), script);
  // An answer from the worker itself: whatever watches it is in place by then.
  await (await started).evaluate(() => undefined);
  const said = await worker.evaluate(
    (asked) =>
      new Promise<unknown>((resolve) => {
        asked.onmessage = (event) => resolve(event.data);
        asked.postMessage('confess');
      }),
  );
  expect(said).toEqual({ evaluates: 'EvalError', fetchesElsewhere: 'TypeError', fetchesOwn: 'nothing' });
  await expectProblem(/refused in a worker: script-src eval/);
  await expectProblem(/refused in a worker: connect-src http:\/\/elsewhere\.invalid/);
});

test('a worker made of text does not start', async () => {
  const page = await openPage();
  const said = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const worker = new Worker(URL.createObjectURL(new Blob(['postMessage(1)'])));
        worker.onmessage = () => resolve('started');
        worker.onerror = () => resolve('refused');
      }),
  );
  expect(said).toBe('refused');
  await expectProblem(/content policy: worker-src blob/);
  await expectProblem(/console: .*Content Security Policy/);
});

/** Runs in a worker: which error each attempt ends in. */
async function confess() {
  const errorOf = async (attempt: () => unknown): Promise<string> => {
    try {
      await attempt();
      return 'nothing';
    } catch (error) {
      return error instanceof Error ? error.name : String(error);
    }
  };
  return {
    evaluates: await errorOf(() => new Function('return 1')()),
    fetchesElsewhere: await errorOf(() => fetch('http://elsewhere.invalid/')),
    fetchesOwn: await errorOf(() => fetch('/')),
  };
}

function answer(path: string): Promise<Response> {
  return fetch(`${inject('baseUrl')}${path}`);
}
