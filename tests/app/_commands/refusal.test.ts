import { parseAndValidateFlightRouterState } from 'next/dist/server/app-render/parse-and-validate-flight-router-state';
import { expect, test } from 'vitest';
import { builtHeaders } from '@/app/_commands/builtHeaders.mjs';
import { refusal } from '@/app/_commands/refusal.mjs';

const ask = (method: string, url: string, headers: Record<string, string> = {}) =>
  refusal({ method, url, headers }, parseAndValidateFlightRouterState);

test.each([
  ['GET', '/'],
  ['HEAD', '/jobs/club-order'],
  ['GET', '/jobs/caf%C3%A9'],
  ['GET', '/?next=//a%&b=\\'],
  ['POST', '/api/price'],
  ['OPTIONS', '/api/price'],
  // The addresses of the API answer for themselves.
  ['DELETE', '/api/price'],
  ['GET', '/_next/static/chunks/a.js'],
])('%s %s may go on', (method, url) => expect(ask(method, url)).toBeUndefined());

test.each([
  ['TRACE', '/', 405],
  ['PROPFIND', '/jobs', 405],
  ['POST', '/', 405],
  ['OPTIONS', '/', 405],
  ['OPTIONS', '*', 400],
  ['GET', 'http://elsewhere.invalid/', 400],
  ['GET', '/%', 400],
  ['GET', '/jobs/%E0%A4%A', 400],
  ['GET', '/jobs/%FF', 400],
  ['GET', '//elsewhere.invalid/', 404],
  ['GET', '/\\elsewhere.invalid/', 404],
])('%s %s is refused with status %d and a sentence', (method, url, status) => {
  const refused = ask(method, url);
  expect(refused?.status).toBe(status);
  expect(refused?.sentence).toMatch(/^[A-Z].*\.$/);
});

test.each([
  ['/', 'GET, HEAD'],
  ['/api/price', 'OPTIONS, POST'],
  ['/api/schema', 'GET, HEAD, OPTIONS'],
])('TRACE %s is told which methods there are', (url, allow) => {
  expect(ask('TRACE', url)?.headers).toEqual({ Allow: allow });
});

test.each(['garbage', '%', '%5B%5D', '%7B%7D', encodeURIComponent('['.repeat(3_000)), 'x'.repeat(50_000)])(
  'a router state that cannot be read is refused: %s',
  (state) => expect(ask('GET', '/', { 'next-router-state-tree': state })?.status).toBe(400),
);

test('a router state of the app itself may go on', () => {
  const state = encodeURIComponent(JSON.stringify(['', { children: ['__PAGE__', {}] }]));
  expect(ask('GET', '/', { 'next-router-state-tree': state })).toBeUndefined();
});

test('of two rules for one address the later one holds', () => {
  const rule = (regex: string, key: string, value: string) => ({ regex, headers: [{ key, value }] });
  const rules = [
    rule('^/.*$', 'A', '1'),
    rule('^/b', 'A', '2'),
    rule('^/.*$', 'C', '3'),
    rule('^/d', 'A', '4'),
  ];
  expect(builtHeaders(rules, '/b')).toEqual([
    ['A', '2'],
    ['C', '3'],
  ]);
});
