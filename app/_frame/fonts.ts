import localFont from 'next/font/local';

/*
 * Both faces come from our own address, and only the Latin files are asked for before the first paint. The
 * rest of the Latin script is fetched when a name needs it; other scripts fall to the system's own faces.
 * The fallback takes over the measures of the face it stands in for, so nothing moves when the face arrives.
 */
const textLatin = localFont({
  src: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  variable: '--font-text-latin',
  adjustFontFallback: 'Arial',
});

const textMore = localFont({
  src: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--font-text-more',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0',
    },
  ],
});

const displayLatin = localFont({
  src: '../../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  variable: '--font-display-latin',
  adjustFontFallback: 'Arial',
});

const displayMore = localFont({
  src: '../../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-ext-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--font-display-more',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0',
    },
  ],
});

/** Class names for the `html` element, which give the tokens their faces. */
export const fontClasses = [textLatin, textMore, displayLatin, displayMore]
  .map((font) => font.variable)
  .join(' ');
