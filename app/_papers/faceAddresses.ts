import type { Face } from '@/lib/lettering/faceTable';

/*
 * Where the files of the type lie: built files of our own address, which the service worker keeps. Written out, because
 * the bundler takes along what it can read.
 */
export const faceAddresses: Readonly<Record<Face, URL>> = {
  'latin-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-latin-400-normal.woff',
    import.meta.url,
  ),
  'latin-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-latin-700-normal.woff',
    import.meta.url,
  ),
  'latin-ext-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-latin-ext-400-normal.woff',
    import.meta.url,
  ),
  'latin-ext-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-latin-ext-700-normal.woff',
    import.meta.url,
  ),
  'vietnamese-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-vietnamese-400-normal.woff',
    import.meta.url,
  ),
  'vietnamese-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-vietnamese-700-normal.woff',
    import.meta.url,
  ),
  'greek-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-greek-400-normal.woff',
    import.meta.url,
  ),
  'greek-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-greek-700-normal.woff',
    import.meta.url,
  ),
  'greek-ext-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-greek-ext-400-normal.woff',
    import.meta.url,
  ),
  'greek-ext-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-greek-ext-700-normal.woff',
    import.meta.url,
  ),
  'cyrillic-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-cyrillic-400-normal.woff',
    import.meta.url,
  ),
  'cyrillic-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-cyrillic-700-normal.woff',
    import.meta.url,
  ),
  'cyrillic-ext-400': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-cyrillic-ext-400-normal.woff',
    import.meta.url,
  ),
  'cyrillic-ext-700': new URL(
    '../../node_modules/@fontsource/noto-sans/files/noto-sans-cyrillic-ext-700-normal.woff',
    import.meta.url,
  ),
  'hebrew-400': new URL(
    '../../node_modules/@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff',
    import.meta.url,
  ),
  'hebrew-700': new URL(
    '../../node_modules/@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-700-normal.woff',
    import.meta.url,
  ),
};
