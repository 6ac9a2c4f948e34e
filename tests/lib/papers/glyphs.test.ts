import fontkit, { type Font } from '@cantoo/fontkit';
import { decodePDFRawStream, PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { neededFaces } from '@/lib/lettering/missingLetters';
import { faceFiles } from '@/tests/fixtures/faceFiles';
import { clubQuote, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const names = [
  ['Latin', 'Erdőfű Łódź Club'],
  ['Greek', 'Αθήνα'],
  ['Cyrillic', 'Дождь'],
  ['Vietnamese', 'Nguyễn Thị Hồng'],
  ['Hebrew', 'מועדון'],
] as const;

const written = (name: string) =>
  writtenPaper({
    kind: 'quote',
    body: { ...clubQuote, customer: { ...clubQuote.customer, name, person: name } },
  });

/** Every face in a file: its outlines by number, and which letters each number stands for. */
async function facesIn(bytes: Uint8Array) {
  const { context } = await PDFDocument.load(bytes);
  const streamOf = (dict: PDFDict, key: string) => {
    const found = dict.lookup(PDFName.of(key));
    return found instanceof PDFRawStream ? decodePDFRawStream(found).decode() : null;
  };
  return context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFDict) || object.lookup(PDFName.of('Subtype')) !== PDFName.of('Type0'))
      return [];
    const map = streamOf(object, 'ToUnicode');
    const [child] = object.lookup(PDFName.of('DescendantFonts'), PDFArray).asArray();
    const descendant = context.lookup(child, PDFDict);
    const program = streamOf(descendant.lookup(PDFName.of('FontDescriptor'), PDFDict), 'FontFile2');
    if (map === null || program === null) return [];
    const font = fontkit.create(program);
    if ('fonts' in font) return [];
    const letters = [
      ...Buffer.from(map)
        .toString('latin1')
        .matchAll(/<([0-9A-F]{4})> <((?:[0-9A-F]{4})+)>/gi),
    ];
    return [
      {
        name: String(object.lookup(PDFName.of('BaseFont'))),
        font,
        letters: letters.map(([, code = '', text = '']) => ({
          glyph: Number.parseInt(code, 16),
          text: Buffer.from(text, 'hex').swap16().toString('utf16le'),
        })),
      },
    ];
  });
}

const outline = (font: Font, glyph: number) => font.getGlyph(glyph)?.path.toSVG() ?? 'no outline';

describe('names on a paper', () => {
  it.each(names)('of %s letters are read back as they were typed: %s', async (_, name) => {
    const { text } = await readPages((await written(name)).bytes);
    // Once bold, once not.
    expect(text.split(name)).toHaveLength(3);
  });

  it.each(names)('of %s letters have the outlines of the whole type, glyph by glyph', async (_, name) => {
    const { bytes } = await written(name);
    const whole = [
      ...(await faceFiles(
        neededFaces(
          [400, 700].map((weight) => ({ text: name, weight: weight === 400 ? 400 : 700 }) as const),
        ),
      )),
    ].flatMap(([face, file]) => {
      const font = fontkit.create(file);
      return 'fonts' in font ? [] : [{ face, font }];
    });
    let compared = 0;
    const seen = new Set<string>();
    for (const { font, letters } of await facesIn(bytes)) {
      for (const { glyph, text } of letters) {
        if (![...name].includes(text) || text === ' ') continue;
        const candidates = whole
          .filter(({ font: one }) => one.hasGlyphForCodePoint(text.codePointAt(0) ?? 0))
          .map(({ font: one }) => outline(one, one.glyphForCodePoint(text.codePointAt(0) ?? 0)?.id ?? 0));
        expect(candidates, text).toContain(outline(font, glyph));
        seen.add(text);
        compared += 1;
      }
    }
    // Every letter of the name, in both weights.
    expect(seen).toEqual(new Set([...name].filter((letter) => letter !== ' ')));
    expect(compared).toBeGreaterThanOrEqual(2 * seen.size);
  });
});
