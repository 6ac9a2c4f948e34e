// @vitest-environment jsdom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { isGone } from '@/app/_network/isGone';

const CHUNK = 'Failed to load chunk /_next/static/chunks/chart.js from module 12';
const asked = vi.fn<(address: string, how: RequestInit) => Promise<Response>>();

beforeEach(() => {
  vi.stubGlobal('fetch', asked);
  document.head.innerHTML =
    '<script src="/_next/static/chunks/mine.js?dpl=1"></script><script src="/other.js"></script>';
});
afterEach(() => {
  asked.mockReset();
  vi.unstubAllGlobals();
});

it('asks the server for the file that is named, past every cache', async () => {
  asked.mockResolvedValue(new Response(null, { status: 404 }));
  expect(await isGone(CHUNK)).toBe(true);
  expect(asked).toHaveBeenCalledWith('/_next/static/chunks/chart.js', { method: 'HEAD', cache: 'no-store' });
});

it('takes a file for there while the server has it, fails or cannot be reached', async () => {
  asked.mockResolvedValueOnce(new Response(null));
  asked.mockResolvedValueOnce(new Response(null, { status: 502 }));
  asked.mockRejectedValueOnce(new TypeError('Failed to fetch'));
  expect([await isGone(CHUNK), await isGone(CHUNK), await isGone(CHUNK)]).toEqual([false, false, false]);
});

it('knows by the server’s own list of files, where none is named, whether the page is of a version before', async () => {
  const list = (files: string) => new Response(`const kept={files:[${files}]}`);
  asked.mockResolvedValueOnce(list('"/_next/static/chunks/newer.js"'));
  asked.mockResolvedValueOnce(list('"/_next/static/chunks/mine.js","/_next/static/chunks/late.js"'));
  expect([await isGone('its script did not come'), await isGone('')]).toEqual([true, false]);
  expect(asked).toHaveBeenCalledWith('/sw.js', { method: 'GET', cache: 'no-store' });
});

it('tells nothing by a server that has no list', async () => {
  asked.mockResolvedValueOnce(new Response('', { status: 404 }));
  asked.mockResolvedValueOnce(new Response('<h1>Sign in to this network</h1>'));
  expect([await isGone(''), await isGone('')]).toEqual([false, false]);
});
