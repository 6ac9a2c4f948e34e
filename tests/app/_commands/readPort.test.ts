import { expect, test } from 'vitest';
import { DEFAULT_PORT, readPort } from '@/app/_commands/readPort.mjs';

test.each([
  [undefined, DEFAULT_PORT],
  ['', DEFAULT_PORT],
  ['8080', 8080],
  [' 8080 ', 8080],
  ['65535', 65_535],
])('PORT=%s is port %s', (text, port) => {
  expect(readPort(text)).toEqual({ port });
});

test.each(['0', '65536', '-1', '80.5', '3e3', '0xbb8', 'abc'])('PORT=%s is refused by a sentence', (text) => {
  expect(readPort(text)).toEqual({ problem: expect.stringContaining(`"${text}"`) });
});
