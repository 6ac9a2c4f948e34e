import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { answersFrom } from '@/app/_offline/worker/answers';

const request = new Request('https://prints.example/jobs/club-order');
const PAGE = { kind: 'page', page: '/jobs/one' } as const;
const FILE = { kind: 'file', path: '/_next/static/chunks/a.js' } as const;
const never = new Promise<Response>(() => undefined);

/** A device and a server; unless told, the device has everything and the server is away. */
function answer(
  asked: Parameters<ReturnType<typeof answersFrom>>[1],
  has: Readonly<{ kept?: string; before?: string; isWhole?: boolean; server?: string | Promise<Response> }>,
) {
  const { kept, before, isWhole = true, server } = has;
  return answersFrom({
    kept: async () => (kept === undefined ? undefined : new Response(kept)),
    keptBefore: async () => (before === undefined ? undefined : new Response(before)),
    isWhole: async () => isWhole,
    fetch: () =>
      typeof server === 'string'
        ? Promise.resolve(new Response(server))
        : (server ?? Promise.reject(new TypeError('Failed to fetch'))),
  })(request, asked);
}

const text = async (response: Promise<Response> | null) => (await response)?.text();

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('an answer of the service worker', () => {
  it('is the kept page even where the server has another, so that page and scripts are of one build', async () => {
    expect(await text(answer(PAGE, { kept: 'kept', server: 'newer' }))).toBe('kept');
    expect(await text(answer(PAGE, { kept: 'kept' }))).toBe('kept');
  });

  it('is the server’s page where some of the kept files are gone, and the kept one where the server is away', async () => {
    expect(await text(answer(PAGE, { kept: 'kept', isWhole: false, server: 'newer' }))).toBe('newer');
    expect(await text(answer(PAGE, { kept: 'kept', isWhole: false }))).toBe('kept');
  });

  it('is the kept page where some files are gone and the line hangs', async () => {
    const given = text(answer(PAGE, { kept: 'kept', isWhole: false, server: never }));
    await vi.advanceTimersByTimeAsync(3_000);
    expect(await given).toBe('kept');
  });

  it('is a sentence where neither has the page', async () => {
    const given = await answer({ kind: 'otherPage' }, {});
    expect(given?.status).toBe(503);
    expect(given?.headers.get('Content-Security-Policy')).toMatch(/^default-src 'none'/);
    expect(await given?.text()).toContain('This page is not on this device');
  });

  it('in the app’s colours by day and by night, by the one style its policy lets in', async () => {
    const given = await answer({ kind: 'otherPage' }, {});
    const style = /<style>(.*)<\/style>/.exec((await given?.text()) ?? '')?.[1] ?? '';
    const hash = createHash('sha256').update(style).digest('base64');
    expect(given?.headers.get('Content-Security-Policy')).toContain(`style-src 'sha256-${hash}'`);
    const tokens = readFileSync('app/tokens.css', 'utf8');
    for (const name of ['paper', 'ink', 'ember']) {
      const pair = new RegExp(`--${name}: light-dark\\((.*), (.*)\\);`).exec(tokens);
      expect(style).toContain(`light-dark(${pair?.[1]},${pair?.[2]})`);
    }
  });

  it('is not the router’s own format where the server is away or hangs, so that the router opens the document', async () => {
    const unanswered = answer({ kind: 'router' }, {});
    await vi.advanceTimersByTimeAsync(300);
    const away = await unanswered;
    expect([away?.status, away?.headers.get('Content-Type')]).toEqual([200, 'text/html; charset=utf-8']);
    const hanging = answer({ kind: 'router' }, { server: never });
    await vi.advanceTimersByTimeAsync(3_300);
    expect((await hanging)?.headers.get('Content-Type')).toBe('text/html; charset=utf-8');
    expect(await text(answer({ kind: 'router' }, { server: 'flight' }))).toBe('flight');
  });

  it('is a file of this build, or of the one before, or else the server’s', async () => {
    expect(await text(answer(FILE, { kept: 'kept', before: 'before', server: 'served' }))).toBe('kept');
    expect(await text(answer(FILE, { before: 'before', server: 'served' }))).toBe('before');
    expect(await text(answer(FILE, { server: 'served' }))).toBe('served');
  });

  it('is a sentence in the format of the API where the server is away', async () => {
    const given = await answer({ kind: 'api' }, {});
    expect(given?.status).toBe(503);
    expect(await given?.json()).toEqual({
      error: 'The server cannot be reached, so nothing was priced. The screens work without it.',
    });
  });

  it('takes a slash too many off, and leaves to the browser what does not concern it', async () => {
    const given = await answer({ kind: 'slashTooMany', address: '/jobs' }, {});
    expect([given?.status, given?.headers.get('Location')]).toEqual([308, '/jobs']);
    expect(answer({ kind: 'none' }, {})).toBeNull();
  });
});
