import { PDFDocument } from '@cantoo/pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { LettersNotDrawn } from '@/lib/lettering/foreignType';
import { neededFaces } from '@/lib/lettering/missingLetters';
import { type Lettering, openLettering } from '@/lib/lettering/openLettering';
import { faceFiles } from '../../fixtures/faceFiles';

/* Read back by a reader that shares nothing with the writer. Lengths in points. */

async function opened(texts: readonly string[]) {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const needed = neededFaces(texts.map((text) => ({ text, weight: 400 as const })));
  const lettering = await openLettering(pdf, { faces: await faceFiles(needed), foreign: null });
  return { pdf, lettering, page: pdf.addPage([600, 400]) };
}

/** What a line is read back as: glyphs with their left edges, from the left. */
async function glyphsOf(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const { items } = await page.getTextContent({ disableNormalization: true });
  const pieces = items.flatMap((item) => ('str' in item ? [item] : []));
  return {
    text: pieces.map(({ str }) => str).join(''),
    pieces: pieces
      .filter(({ str }) => str.trim() !== '')
      .map(({ str, transform, width }) => ({ str, x: Number(transform[4]), width })),
  };
}

async function setAlone(text: string) {
  const { pdf, lettering, page } = await opened([text]);
  const width = lettering.drawLine(page, text, { x: 50, y: 300, size: 12 });
  const bytes = await pdf.save();
  return { bytes, width, ...(await glyphsOf(bytes)) };
}

describe('texts in a file', () => {
  it.each([
    ['Ramblers Club, 37 shirts: 8 × 9.6 in – “mirrored”', 'Latin'],
    ['Erdőfű, Łódź, İstanbul, čšž', 'more Latin'],
    ['Дождь и Ґанок №5', 'Cyrillic'],
    ['Ἀθῆναι και Θεσσαλονίκη', 'Greek'],
    ['Nguyễn Thị Hồng', 'Vietnamese'],
    ['שלום', 'Hebrew'],
  ])('%s (%#) is read back as it was typed', async (text) => {
    expect((await setAlone(text)).text).toBe(text);
  });

  it('composes letters typed apart from their marks', async () => {
    const { text } = await setAlone('Nguyễn Thị Hồng'.normalize('NFD'));
    expect(text).toBe('Nguyễn Thị Hồng');
  });

  it('stands Hebrew from the right and the Latin in it from the left', async () => {
    // UAX #9: levels of "אב 12 ab" from the right: the figures and the Latin keep their own order.
    const { pieces } = await setAlone('אב 12 ab');
    const [first, last] = pieces.toSorted((one, other) => one.x - other.x);
    expect([first?.str, last?.str]).toEqual(['ab 12', 'אב']);
  });

  it('is as small as the letters in it', async () => {
    // Two letters of the largest file, of 78 kB; about a hundred bytes an outline, and the frame of a file.
    expect((await setAlone('ő')).bytes.length).toBeLessThan(6_000);
    expect(
      (await setAlone('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz')).bytes.length,
    ).toBeLessThan(12_000);
  });

  it('is the same file for the same text', async () => {
    expect(Buffer.compare((await setAlone('Erdőfű')).bytes, (await setAlone('Erdőfű')).bytes)).toBe(0);
  });

  it('refuses letters that nobody can draw, and never leaves a gap', async () => {
    await expect(setAlone('عربي')).rejects.toThrow(LettersNotDrawn);
    await expect(setAlone('to the right →')).rejects.toThrow('“→”');
  });

  it('is as wide as it says', async () => {
    const { width, pieces } = await setAlone('Ramblers');
    // Advances of the published type, in thousandths: R 622 a 561 m 935 b 615 l 258 e 564 r 413 s 479, no pair of it kerned.
    expect(width).toBeCloseTo(((622 + 561 + 935 + 615 + 258 + 564 + 413 + 479) * 12) / 1000, 1);
    expect(pieces[0]?.width).toBeCloseTo(width, 1);
  });
});

describe('a paragraph', () => {
  const words = 'one two three four five six seven eight nine ten';

  it('goes on in the next line, and nothing of it is lost', async () => {
    const { pdf, lettering, page } = await opened([words]);
    const end = lettering.drawParagraph(page, words, { x: 50, top: 300, widthPt: 100, size: 10 });
    const { text, pieces } = await glyphsOf(await pdf.save());
    expect(text.replaceAll(/\s/g, '')).toBe(words.replaceAll(' ', ''));
    expect(pieces.every(({ x, width }) => x >= 50 && x + width <= 150.01)).toBe(true);
    expect(300 - end).toBeCloseTo(lettering.measureParagraph(words, { widthPt: 100, size: 10 }), 6);
  });

  it('of Hebrew begins at the right', async () => {
    const hebrew = 'שלום עולם';
    const { pdf, lettering, page } = await opened([hebrew]);
    lettering.drawParagraph(page, hebrew, { x: 50, top: 300, widthPt: 200, size: 10 });
    const { pieces } = await glyphsOf(await pdf.save());
    expect(Math.max(...pieces.map(({ x, width }) => x + width))).toBeCloseTo(250, 1);
  });

  it.each(['Donaudampfschifffahrtsgesellschaft', 'NguyễnThịHồngNguyễnThịHồng'])(
    'breaks a word that is too long between letters: %s',
    async (text) => {
      const { pdf, lettering, page } = await opened([text]);
      lettering.drawParagraph(page, text, { x: 50, top: 300, widthPt: 40, size: 10 });
      const read = await glyphsOf(await pdf.save());
      expect(read.text.replaceAll(/\s/g, '')).toBe(text);
      expect(read.pieces.every(({ x, width }) => x + width <= 90.01)).toBe(true);
    },
  );
});

describe('a line with too little room', () => {
  const fitted = async (draw: (lettering: Lettering) => number, text: string) => {
    const { pdf, lettering, page } = await opened([text]);
    const fits = lettering.drawFitted(page, text, { x: 0, y: 0, size: 10, widthPt: draw(lettering) });
    return { fits, text: (await glyphsOf(await pdf.save())).text };
  };

  it('is shortened with dots and says so', async () => {
    expect(await fitted(() => 50, 'Left chest badge')).toEqual({
      fits: false,
      text: expect.stringMatching(/^Left c[hest]*…$/),
    });
  });

  it('that has just enough stands whole', async () => {
    const text = 'Left chest badge';
    const whole = await fitted((lettering) => lettering.measure(text, { size: 10 }), text);
    expect(whole).toEqual({ fits: true, text });
  });
});
