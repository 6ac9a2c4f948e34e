import fontkit, { type Font } from '@cantoo/fontkit';
import type { PDFDocument, PDFFont } from '@cantoo/pdf-lib';
import type { Face } from './faceTable';

/** Letters as the type sets them. */
export interface Shaped {
  /** Width of all of them, in thousandths of the size. */
  readonly width: number;
  /** From the left. */
  readonly glyphs: readonly Glyph[];
}

interface Glyph {
  /** Number of the glyph in the file, four digits of sixteen. */
  readonly code: string;
  /** Where it stands, from the start of the letters and from the line, in thousandths of the size. */
  readonly x: number;
  readonly y: number;
  /** How far a reader of the file moves on by itself. */
  readonly advance: number;
}

export interface OpenFace {
  readonly font: PDFFont;
  readonly shape: (text: string) => Shaped;
}

/**
 * Puts a face into a file, with the glyphs that get used and no others.
 *
 * @param bytes of its WOFF file: from WOFF 2 the tool for type cuts glyphs out of the packed table, which spoils them
 */
export async function openFace(pdf: PDFDocument, face: Face, bytes: Uint8Array): Promise<OpenFace> {
  const type = openType(face, bytes);
  // The same face is not read twice, and the library sets it as it is set here.
  pdf.registerFontkit({ create: () => type });
  const font = await pdf.embedFont(bytes, { subset: true, customName: nameOf(face, type.postscriptName) });
  const thousandth = 1000 / type.unitsPerEm;
  const known = new Map<string, Shaped>();

  function shape(text: string): Shaped {
    const before = known.get(text);
    if (before !== undefined) return before;
    const { glyphs, positions } = type.layout(text);
    if (glyphs.some(({ id }) => id === 0)) throw new Error(`the type ${face} lacks a letter of “${text}”`);
    // The library names the glyphs in the same order and drops where they stand: kerning and marks would be lost.
    const codes = font.encodeText(text).asString();
    let x = 0;
    const shaped = glyphs.map(({ advanceWidth }, place) => {
      const at = positions?.[place];
      const glyph = {
        code: codes.slice(place * 4, place * 4 + 4),
        x: (x + (at?.xOffset ?? 0)) * thousandth,
        y: (at?.yOffset ?? 0) * thousandth,
        advance: advanceWidth * thousandth,
      };
      x += at?.xAdvance ?? advanceWidth;
      return glyph;
    });
    const made = { width: x * thousandth, glyphs: shaped };
    known.set(text, made);
    return made;
  }
  return { font, shape };
}

function openType(face: Face, bytes: Uint8Array): Font {
  const type = fontkit.create(bytes);
  if ('fonts' in type || type.type !== 'WOFF') throw new Error(`the type ${face} is no WOFF file`);
  const layout = type.layout.bind(type);
  // The type takes some letters apart, to put marks on them; where there is none, the parts could not be read back.
  return Object.assign(type, {
    layout: (text: string) => layout(text, /\p{M}/u.test(text) ? {} : { ccmp: false }),
  });
}

/** The format wants six capitals before the name of a face that is not whole, different for each. */
function nameOf(face: Face, name: string | null): string {
  const tag = face
    .replaceAll(/[^a-z]/g, '')
    .toUpperCase()
    .padEnd(6, 'X');
  return `${tag.slice(0, 3)}${tag.slice(-3)}+${name ?? 'Type'}`;
}
