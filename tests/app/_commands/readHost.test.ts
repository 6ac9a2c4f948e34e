import { expect, test } from 'vitest';
import { addressOf, readHost } from '@/app/_commands/readHost.mjs';

test.each([undefined, '', ' ', '127.0.0.1', '127.1.2.3', 'localhost', '::1'])(
  'HOST=%s serves this machine alone',
  (text) => {
    expect(readHost(text)).toMatchObject({ isOwn: true });
  },
);

test.each(['0.0.0.0', '::', '192.168.1.20', 'bench.example', ' 0.0.0.0 '])(
  'HOST=%s serves others too, which is told',
  (text) => {
    expect(readHost(text)).toEqual({ host: text.trim(), isOwn: false });
  },
);

test.each(['0.0.0', '256.1.1.1', 'http://bench', '0.0.0.0:3000', 'a b', '-x'])(
  'HOST=%s is refused by a sentence',
  (text) => {
    expect(readHost(text)).toEqual({ problem: expect.stringContaining(`"${text}"`) });
  },
);

test.each([
  ['127.0.0.1', 'http://127.0.0.1:3000'],
  ['0.0.0.0', 'http://127.0.0.1:3000'],
  ['::', 'http://127.0.0.1:3000'],
  // RFC 3986 §3.2.2: an address of IPv6 stands in brackets.
  ['::1', 'http://[::1]:3000'],
  ['bench.example', 'http://bench.example:3000'],
])('what listens on %s is opened at %s', (host, address) => {
  expect(addressOf(host, 3000)).toBe(address);
});
