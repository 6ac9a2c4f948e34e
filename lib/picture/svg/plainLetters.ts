/** Letters written as numbers (&#106; is j) or with a backslash in styles, and breaks inside a word, written plainly. */
export const plainLetters = (text: string): string =>
  text
    .replace(/&#x([0-9a-f]{1,6});?/gi, (_, code: string) => letter(Number.parseInt(code, 16)))
    .replace(/&#(\d{1,7});?/g, (_, code: string) => letter(Number(code)))
    .replace(/\\([0-9a-f]{1,6})\s?/gi, (_, code: string) => letter(Number.parseInt(code, 16)));

function letter(code: number) {
  const isControl = code < 0x20;
  return isControl || code > 0x10ffff ? '' : String.fromCodePoint(code);
}
