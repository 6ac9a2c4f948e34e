import { describe, expect, it, test } from 'vitest';
import { missingFonts } from '@/app/_artwork/missingFonts';
import { svgFonts } from '@/lib/picture/svg/svgFonts';

const fontsOf = (inside: string, root = '') =>
  svgFonts(`<svg xmlns="http://www.w3.org/2000/svg"${root}>${inside}</svg>`, 1000).map((names) =>
    names.join('/'),
  );

describe('fonts that live text names', () => {
  test.each<[string, string, readonly string[]]>([
    ['an attribute', '<text font-family="Futura">a</text>', ['Futura']],
    ['a style', `<text style="fill:red;font-family:'Gotham Bold', sans-serif">a</text>`, ['Gotham Bold']],
    ['the short form', '<text style="font: italic 12px/1.2 Futura, serif">a</text>', ['Futura']],
    ['the part around', '<g font-family="Futura"><text><tspan>a</tspan></text></g>', ['Futura']],
    ['a rule for a class', '<style>.t{font-family:Futura}</style><text class="x t">a</text>', ['Futura']],
    [
      'a rule above an attribute',
      '<style>text{font-family:Futura}</style><text font-family="Arial">a</text>',
      ['Futura'],
    ],
    [
      'another spelling',
      `<text font-family="MyriadPro-Regular, 'Myriad Pro', Arial">a</text>`,
      ['MyriadPro-Regular/Myriad Pro'],
    ],
    ['one font twice', '<text font-family="Futura">a</text><text font-family="futura">b</text>', ['futura']],
    ['a kind of font', '<text font-family="sans-serif">a</text>', []],
    ['none', '<text>a</text>', []],
    ['text without letters', '<text font-family="Futura"/>', []],
    ['outlines', '<g font-family="Futura"><path d="M0 0h1v1z"/></g>', []],
    [
      'a font inside the file',
      '<style>@font-face{font-family:Futura;src:url(data:font/woff2;base64,AA==)}</style><text font-family="Futura">a</text>',
      [],
    ],
    ['a rule for another class', '<style>.u{font-family:Futura}</style><text class="t">a</text>', []],
  ])('%s', (_, inside, expected) => {
    expect(fontsOf(inside)).toEqual(expected);
  });

  it('go down from the root', () => {
    expect(fontsOf('<text>a</text>', ' font-family="Futura"')).toEqual(['Futura']);
  });
});

describe('fonts the device lacks', () => {
  /** A device that has one font; text in any other falls to what stands behind it. */
  const widthIn = (families: string) => {
    const known: Readonly<Record<string, number>> = { '"Arial"': 80, monospace: 100, serif: 90 };
    return (
      families
        .split(', ')
        .map((family) => known[family])
        .find((width) => width !== undefined) ?? 0
    );
  };

  test.each([
    [[['Futura']], ['Futura']],
    [[['Arial']], []],
    [[['ArialMT', 'Arial']], []],
    [[['Futura', 'Futura PT'], ['Arial']], ['Futura']],
  ] as const)('of %j are %j', (fonts, expected) => {
    expect(missingFonts(fonts, widthIn)).toEqual(expected);
  });
});
