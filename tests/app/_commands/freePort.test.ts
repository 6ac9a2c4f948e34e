import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { freePort } from '@/app/_commands/freePort.mjs';
import { OWN_HOST } from '@/app/_commands/readHost.mjs';

test('the port asked for is taken when it is free', async () => {
  expect(await freePort(3000, OWN_HOST, async (port) => port)).toBe(3000);
});

test('the next one is taken when it is busy', async () => {
  expect(await freePort(3000, OWN_HOST, async (port) => (port < 3002 ? undefined : port))).toBe(3002);
});

test('nothing is taken when a hundred are busy, or the numbers end', async () => {
  const asked: number[] = [];
  const busy = async (port: number) => void asked.push(port);
  expect(await freePort(3000, OWN_HOST, busy)).toBeUndefined();
  expect(asked).toHaveLength(100);
  expect(await freePort(65_535, OWN_HOST, busy)).toBeUndefined();
  expect(asked).toHaveLength(101);
});

test('a port that a server listens on is busy', async () => {
  const busy = await freePort(0);
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(busy, OWN_HOST, resolve));
  expect(await freePort(busy ?? 0)).toBeGreaterThan(busy ?? 0);
  await new Promise((resolve) => server.close(resolve));
});
