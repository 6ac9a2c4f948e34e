import type { PDFDocument, PDFPage, PDFRef } from '@cantoo/pdf-lib';
import { type Atom, atomsOf, type Direction, visualOrder } from './atoms';
import { breakLines, firstThatFit, widthOfLine, withoutLastSpaces } from './breakLines';
import type { Face, Weight } from './faceTable';
import { type Colour, embedForeign, type ForeignRun, type ForeignType, LettersNotDrawn } from './foreignType';
import { setText } from './letters';
import { type OpenFace, openFace } from './openFace';
import { drawGlyphs, drawPicture } from './operators';

/** How a text is set. Lengths in points, from the lower left corner of the page. */
interface Style {
  readonly size: number;
  readonly weight?: Weight;
  readonly colour?: Colour;
  /** `auto`: as the first letter that has a direction. */
  readonly direction?: Direction;
}

/** `start` is the left, for lines that run from right to left the right. */
type Align = 'left' | 'right' | 'centre' | 'start' | 'end';

interface LinePlace extends Style {
  readonly x: number;
  /** Of the line that the letters stand on. */
  readonly y: number;
  /** Room of the line; without any, it begins at `x`. */
  readonly widthPt?: number;
  readonly align?: Align;
}

interface ParagraphPlace extends Style {
  readonly x: number;
  /** Upper edge of the first line. */
  readonly top: number;
  readonly widthPt: number;
  readonly align?: Align;
  /** From line to line, in sizes; 1.35 where none is named. */
  readonly leading?: number;
  /** How the text begins, set bold. */
  readonly lead?: string;
}

/** A line of a paragraph that is set and waits for its place. */
export interface SetLine {
  readonly high: number;
  /** @param top its upper edge */
  readonly draw: (page: PDFPage, at: { readonly x: number; readonly top: number }) => void;
}

export interface Lettering {
  /** Width of a text in one line. */
  readonly measure: (text: string, style: Style) => number;
  /** Height of a text as `drawParagraph` sets it. */
  readonly measureParagraph: (
    text: string,
    place: Pick<ParagraphPlace, 'widthPt' | 'leading'> & Style,
  ) => number;
  /** A text in as many lines as it takes, each to be drawn where there is room for it. */
  readonly setParagraph: (text: string, place: Omit<ParagraphPlace, 'x' | 'top'>) => readonly SetLine[];
  /** A text in one line, whatever room it takes. @returns its width */
  readonly drawLine: (page: PDFPage, text: string, place: LinePlace) => number;
  /** A text in one line of a width, shortened where it is longer: its whole must then stand elsewhere. @returns whether */
  readonly drawFitted: (
    page: PDFPage,
    text: string,
    place: LinePlace & { readonly widthPt: number },
  ) => boolean;
  /** A text in as many lines as it takes. @returns the lower edge of the last */
  readonly drawParagraph: (page: PDFPage, text: string, place: ParagraphPlace) => number;
}

interface LetteringOptions {
  /** The files that `neededFaces` names, WOFF. */
  readonly faces: ReadonlyMap<Face, Uint8Array>;
  /** Null where the device draws nothing: then other letters are an error, `LettersNotDrawn`. */
  readonly foreign: ForeignType | null;
}

/** How high and how deep letters reach, in sizes. */
const ASCENT = 1.069;
const DESCENT = 0.293;
const LEADING = 1.35;
const BLACK: Colour = [0, 0, 0];

/** Opens the type for a file: texts of any script, in the order they are read. */
export async function openLettering(
  pdf: PDFDocument,
  { faces, foreign }: LetteringOptions,
): Promise<Lettering> {
  const open = new Map<Face, OpenFace>();
  for (const [face, bytes] of faces) open.set(face, await openFace(pdf, face, bytes));
  const pictures = new Map<
    string,
    { readonly ref: PDFRef; readonly picture: ReturnType<ForeignType['draw']> }
  >();

  const shapeOf = (atom: Atom, part: NonNullable<Atom['part']>, weight: Weight) => {
    const face = open.get(`${part}-${weight}`);
    if (face === undefined) throw new Error(`the type ${part}-${weight} is not there`);
    return { face, shaped: face.shape(atom.letters.join('')) };
  };
  const runOf = (atom: Atom, style: Style): ForeignRun => ({
    text: atom.letters.join(''),
    weight: weightOf(atom, style),
    sizePt: style.size,
    isRightToLeft: atom.level % 2 === 1,
    colour: style.colour ?? BLACK,
  });
  const widthIn = (style: Style) => (atom: Atom) => {
    if (atom.part !== null)
      return (shapeOf(atom, atom.part, weightOf(atom, style)).shaped.width * style.size) / 1000;
    if (foreign === null) throw new LettersNotDrawn(atom.letters.join(''));
    return foreign.width(runOf(atom, style));
  };

  function drawAtom(page: PDFPage, atom: Atom, x: number, y: number, style: Style): void {
    const { size, colour = BLACK } = style;
    if (atom.part !== null) {
      const { face, shaped } = shapeOf(atom, atom.part, weightOf(atom, style));
      drawGlyphs(page, face.font, shaped, { x, y, size, colour });
      return;
    }
    if (foreign === null) throw new LettersNotDrawn(atom.letters.join(''));
    const run = runOf(atom, style);
    const key = JSON.stringify(run);
    const picture = pictures.get(key)?.picture ?? foreign.draw(run);
    const ref = pictures.get(key)?.ref ?? embedForeign(pdf, picture);
    pictures.set(key, { ref, picture });
    drawPicture(page, ref, picture, { x, y, text: run.text });
  }

  /** Draws atoms of a line and answers their width. */
  function drawAtoms(
    page: PDFPage,
    atoms: readonly Atom[],
    isRightToLeft: boolean,
    place: LinePlace,
  ): number {
    const width = widthIn(place);
    const wide = widthOfLine(atoms, width);
    let x = place.x + shareBefore(place.align ?? 'left', isRightToLeft) * ((place.widthPt ?? wide) - wide);
    for (const atom of visualOrder(atoms)) {
      drawAtom(page, atom, x, place.y, place);
      x += width(atom);
    }
    return wide;
  }

  const oneLine = (text: string, { direction = 'auto' }: Style) =>
    atomsOf(setText(text).replaceAll('\n', ' '), direction);

  /** @param boldTo how many units at its start are bold, whatever the rest */
  const linesOf = (text: string, place: Pick<ParagraphPlace, 'widthPt'> & Style, boldTo = 0) =>
    setText(text)
      .split('\n')
      .flatMap((typed, at) => {
        const { atoms, isRightToLeft } = atomsOf(typed, place.direction ?? 'auto', at === 0 ? boldTo : 0);
        return breakLines(atoms, widthIn(place), place.widthPt).map((line) => ({ line, isRightToLeft }));
      });

  function setParagraph(
    text: string,
    { lead = '', ...place }: Omit<ParagraphPlace, 'x' | 'top'>,
  ): readonly SetLine[] {
    const high = place.size * (place.leading ?? LEADING);
    // The letters stand in the middle of their line.
    const toBase = (high + (ASCENT - DESCENT) * place.size) / 2;
    return linesOf(text, place, setText(lead).length).map(({ line, isRightToLeft }) => ({
      high,
      draw(page, { x, top }) {
        drawAtoms(page, line, isRightToLeft, {
          ...place,
          x,
          align: place.align ?? 'start',
          y: top - toBase,
        });
      },
    }));
  }

  return {
    measure: (text, style) => widthOfLine(oneLine(text, style).atoms, widthIn(style)),
    measureParagraph: (text, place) => linesOf(text, place).length * place.size * (place.leading ?? LEADING),
    drawLine(page, text, place) {
      const { atoms, isRightToLeft } = oneLine(text, place);
      return drawAtoms(page, atoms, isRightToLeft, place);
    },
    drawFitted(page, text, place) {
      const { atoms, isRightToLeft } = oneLine(text, place);
      const width = widthIn(place);
      const whole = withoutLastSpaces(atoms);
      const fits = widthOfLine(whole, width) <= place.widthPt;
      const dots = atomsOf('…', isRightToLeft ? 'rtl' : 'ltr').atoms;
      const shown = fits
        ? whole
        : [...firstThatFit(whole, width, place.widthPt - widthOfLine(dots, width)), ...dots];
      drawAtoms(page, shown, isRightToLeft, place);
      return fits;
    },
    setParagraph,
    drawParagraph(page, text, { x, top, ...place }) {
      let low = top;
      for (const { high, draw } of setParagraph(text, place)) {
        draw(page, { x, top: low });
        low -= high;
      }
      return low;
    },
  };
}

const weightOf = (atom: Atom, { weight = 400 }: Style): Weight => (atom.isBold ? 700 : weight);

/** How much of the free room stands before a line, from the left. */
function shareBefore(align: Align, isRightToLeft: boolean): number {
  switch (align) {
    case 'left':
      return 0;
    case 'right':
      return 1;
    case 'centre':
      return 0.5;
    case 'start':
      return isRightToLeft ? 1 : 0;
    case 'end':
      return isRightToLeft ? 0 : 1;
    default:
      return align satisfies never;
  }
}
