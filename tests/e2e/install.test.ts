import sharp from 'sharp';
import { expect, inject, test } from 'vitest';

const fetched = async (path: string) => {
  const response = await fetch(new URL(path, inject('baseUrl')));
  expect(response.status, path).toBe(200);
  return response;
};

const sizeOf = async (path: string) => {
  const { width, height, format } = await sharp(await (await fetched(path)).arrayBuffer()).metadata();
  return `${format} ${width}x${height}`;
};

test('the app can be put on a home screen: with a name, a start and icons of the sizes that browsers ask for', async () => {
  const page = await (await fetched('/')).text();
  const [, address = ''] = /<link rel="manifest" href="([^"]+)"/.exec(page) ?? [];
  const manifest = await (await fetched(address)).json();
  expect(manifest).toMatchObject({
    name: 'Pressminute',
    short_name: 'Pressminute',
    start_url: '/',
    display: 'standalone',
  });
  // What browsers need before they offer it: 192 and 512 px, and one that may be cut to any shape.
  const icons: readonly { src: string; sizes: string; purpose?: string }[] = manifest.icons;
  expect(icons.map(({ sizes, purpose = 'any' }) => `${sizes} ${purpose}`)).toEqual([
    '192x192 any',
    '512x512 any',
    '512x512 maskable',
  ]);
  for (const { src, sizes } of icons) expect(await sizeOf(src)).toBe(`png ${sizes}`);
  const [, apple = ''] = /<link rel="apple-touch-icon" href="([^"]+)"/.exec(page) ?? [];
  expect(await sizeOf(apple.replaceAll('&amp;', '&'))).toBe('png 180x180');
  for (const { url } of manifest.shortcuts) await fetched(url);
});
