import { expect, test } from 'vitest';
import { findChromium, usualPlaces } from './findChromium.mjs';

test('the one named by CHROMIUM_PATH is the only one that counts', async () => {
  const env = { ...process.env, CHROMIUM_PATH: '/opt/chromium' };
  expect(usualPlaces('linux', env)).toEqual(['/opt/chromium']);
  expect(await findChromium(env, (path) => path === '/opt/chromium')).toBe('/opt/chromium');
});

test('the first one that starts is taken', async () => {
  const { CHROMIUM_PATH: _, ...env } = process.env;
  const places = usualPlaces(process.platform, env);
  expect(places.length).toBeGreaterThan(1);
  expect(await findChromium(env, (path) => path === places[1])).toBe(places[1]);
});

test('there is none when none starts', async () => {
  expect(await findChromium(process.env, () => false)).toBeUndefined();
});

test.each(['linux', 'darwin', 'win32'] as const)('the usual places of %s are known', (platform) => {
  const env = { NODE_ENV: 'test', PROGRAMFILES: 'C:\\Program Files' } as const;
  expect(usualPlaces(platform, env).length).toBeGreaterThan(1);
});
