import { describe, expect, it, test } from 'vitest';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgHeader } from '@/lib/picture/svg/svgHeader';
import { vectorPixels } from '@/lib/picture/svg/vectorPixels';
import { textBytes } from '@/tests/fixtures/pictures/fileBytes';

const svg = (attributes: string, inside = '<path d="M0 0h1"/>') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inside}</svg>`;
const inspect = (text: string) => inspectPicture(textBytes(text));

// fabricjs/fabric.js issue 1874: viewBox only, percent, zero, negative or no size.
describe('the shape of an SVG', () => {
  test.each([
    ['width and height', 'width="30" height="20"', 30, 20],
    ['inches', 'width="1in" height=".5in"', 96, 48],
    ['millimetres', 'width="25.4mm" height="50.8mm"', 96, 192],
    ['viewBox only', 'viewBox="0 0 3 2"', 3, 2],
    ['viewBox with commas', `viewBox='-5,-5, 3,2'`, 3, 2],
    ['percent with a viewBox', 'width="100%" height="100%" viewBox="0 0 3 2"', 3, 2],
    ['one side with a viewBox', 'width="60" viewBox="0 0 3 2"', 60, 40],
    ['sides before the viewBox', 'width="30" height="20" viewBox="0 0 1 1"', 30, 20],
  ])('%s', (_, attributes, width, height) => {
    expect(inspect(svg(attributes))).toMatchObject({
      ok: true,
      value: { kind: 'vector', size: { width, height } },
    });
  });

  test.each([
    ['nothing', '', 'none'],
    ['percent alone', 'width="100%" height="100%"', 'none'],
    ['one side alone', 'width="30"', 'none'],
    ['a unit of text size', 'width="3em" height="2em"', 'none'],
    ['no width', 'width="0" height="20"', 'zero'],
    ['an empty viewBox', 'viewBox="0 0 0 0"', 'zero'],
    ['a negative width', 'width="-30" height="20" viewBox="0 0 3 2"', 'negative'],
  ])('is refused with what was given: %s', (_, attributes, state) => {
    expect(inspect(svg(attributes))).toMatchObject({ ok: false, problem: { kind: 'svgSize', state } });
  });

  test.each([
    ['a declaration', '<?xml version="1.0"?>\n'],
    ['a mark and a comment', '\uFEFF<!-- made by <svg> a program -->\n'],
    ['a document type', '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/svg11.dtd">'],
  ])('is found behind %s', (_, before) => {
    expect(inspect(before + svg('viewBox="0 0 3 2"')).ok).toBe(true);
  });

  it('is read from UTF-16', () => {
    const text = svg('viewBox="0 0 3 2"');
    const bytes = Uint8Array.from([0xff, 0xfe, ...[...text].flatMap((letter) => [letter.charCodeAt(0), 0])]);
    expect(inspectPicture(bytes).ok).toBe(true);
  });

  it('that ends before its closing tag is cut short', () => {
    expect(inspect('<svg viewBox="0 0 3 2"><path d="M0 0')).toMatchObject({ problem: { kind: 'cutShort' } });
  });
});

describe('an SVG that could do more than be seen is refused', () => {
  const box = 'viewBox="0 0 3 2"';
  test.each([
    ['a script', svg(box, '<script>x</script>'), 'script'],
    ['a script with a prefix', svg(box, '<s:script xmlns:s="http://www.w3.org/2000/svg"/>'), 'script'],
    ['an address that is a script', svg(box, '<a href="javascript:x"/>'), 'script'],
    ['the same in numbers', svg(box, '<a href="&#106;ava&#x73;cript:x"/>'), 'script'],
    ['a handler', svg(`${box} onload="x"`), 'handler'],
    ['a handler after a slash', svg(box, '<path/onclick="x"/>'), 'handler'],
    ['a page inside', svg(box, '<foreignObject><p/></foreignObject>'), 'embedded'],
    ['a remote picture', svg(box, '<image href="https://a.example/b.png"/>'), 'outside'],
    ['one by its old name', svg(box, `<image xlink:href='//a.example/b.png'/>`), 'outside'],
    ['a picture beside it', svg(box, '<image href="b.png"/>'), 'outside'],
    ['an SVG within', svg(box, '<image href="data:image/svg+xml,x"/>'), 'outside'],
    ['a remote fill', svg(box, '<path fill="url(http://a.example/#b)"/>'), 'outside'],
    ['the same with a backslash', svg(box, '<style>p{fill:\\75 rl(http://a.example)}</style>'), 'outside'],
    ['a remote style', svg(box, '<style>@import "a.css"</style>'), 'outside'],
    ['a style sheet', `<?xml-stylesheet href="a.css"?>${svg(box)}`, 'outside'],
    ['a reference that is moved', svg(box, '<set attributeName="href" to="a"/>'), 'outside'],
    ['another base', svg(`${box} xml:base="http://a.example/"`), 'outside'],
    ['names for other text', `<!DOCTYPE svg [<!ENTITY a "b">]>${svg(box)}`, 'entity'],
  ])('%s', (_, text, found) => {
    expect(inspect(text)).toMatchObject({ ok: false, problem: { kind: 'svgUnsafe', found } });
  });

  test.each([
    ['a gradient of its own', '<path fill="url(#a)"/><use href="#b"/>'],
    ['a picture of pixels within', '<image href="data:image/png;base64,AAAA"/>'],
    ['a comment about scripts', '<!-- <script> onload= -->'],
    ['words about a handler', '<text>The on button</text>'],
  ])('but not for %s', (_, inside) => expect(inspect(svg(box, inside)).ok).toBe(true));

  // One that was read again and again from each of its signs would end nowhere near the limit of a test.
  it('however long a hostile file is, each is read to its end', () => {
    const pieces = ['<!--', '<!DOCTYPE', ' url(', ' href="', '&#', '<', ' on', '<svg '];
    const read = pieces.flatMap((piece) => {
      const long = piece.repeat(2_000_000 / piece.length);
      return [inspect(svg(box, long)), inspect(long)];
    });
    expect(read).toHaveLength(2 * pieces.length);
    expect(read).not.toContain(undefined);
  });
});

describe('svgAtSize writes the size out', () => {
  test.each([
    [
      'viewBox="0 0 3 2"',
      '<svg width="300" height="200" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2">',
    ],
    [
      'width="30" height="20" stroke-width="2"',
      '<svg width="300" height="200" viewBox="0 0 30 20" xmlns="http://www.w3.org/2000/svg"   stroke-width="2">',
    ],
  ])('of %s', (attributes, root) => {
    const text = `<?xml version="1.0" encoding="latin1"?>${svg(attributes)}`;
    const header = svgHeader(text, text.length);
    if (!header.ok) throw new Error('a good SVG');
    expect(svgAtSize(text, header.value, { width: 300, height: 200 })).toBe(
      `${root}<path d="M0 0h1"/></svg>`,
    );
  });
});

describe('vectorPixels', () => {
  it('gives 300 px an inch of the print', () => {
    expect(vectorPixels({ width: 3, height: 2 }, 254)).toEqual({ width: 3000, height: 2000 });
  });
  it('stays within the bounds of pictures for a print of any shape', () => {
    const { width, height } = vectorPixels({ width: 1000, height: 1 }, 10_000);
    expect(width).toBe(16_384);
    expect(height).toBe(16);
    const large = vectorPixels({ width: 1, height: 1 }, 10_000);
    expect(large.width * large.height).toBeLessThanOrEqual(25_000_000);
  });
});
