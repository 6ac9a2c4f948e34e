import {
  clip,
  closePath,
  concatTransformationMatrix,
  drawObject,
  endPath,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFImage,
  type PDFPage,
  PrintScaling,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  StandardFonts,
} from '@cantoo/pdf-lib';
import { placeInBox } from '@/lib/artwork/placeInBox';
import { labelPlace } from './labelPlace';
import { POINTS_PER_MM, pieceMatrix } from './pieceMatrix';
import type { PieceToPrint, PrintedSheets, SheetsToPrint } from './sheetsToPrint';

const LABEL_POINTS = 5;
const HAIRLINE_POINTS = 0.5;
const grey = rgb(0.35, 0.35, 0.35);

/**
 * Writes sheets as a file that prints at true size: a page is as large as the paper, pictures lie where the layout
 * has them, at their own resolution. The file asks the printer's window for no scaling.
 */
export async function writeSheets(job: SheetsToPrint): Promise<PrintedSheets> {
  // Without a date of its own the same sheets give the same file.
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(job.title);
  pdf.setCreator('Pressminute');
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const writer: Writer = {
    job,
    font,
    known: new Set(font.getCharacterSet()),
    images: await embedAll(pdf, job),
  };
  const notDrawn = new Set<string>();
  for (const { pieces, heightMm } of job.sheets) {
    const page = pdf.addPage([job.widthMm * POINTS_PER_MM, heightMm * POINTS_PER_MM]);
    for (const piece of pieces) {
      const missing = missingLetters(piece.name, writer);
      for (const letter of missing) notDrawn.add(letter);
      const name = missing.length === 0 ? piece.name : '';
      drawPiece(page, heightMm, piece, name, writer);
      drawLabel(page, heightMm, piece, pieces, name, writer);
    }
  }
  return { bytes: await pdf.save(), notDrawn: [...notDrawn] };
}

interface Writer {
  readonly job: SheetsToPrint;
  readonly font: PDFFont;
  /** Code points the type has. */
  readonly known: ReadonlySet<number>;
  readonly images: ReadonlyMap<string, PDFImage>;
}

async function embedAll(
  pdf: PDFDocument,
  { pictures }: SheetsToPrint,
): Promise<ReadonlyMap<string, PDFImage>> {
  const images = new Map<string, PDFImage>();
  for (const [key, { kind, bytes }] of pictures) {
    images.set(key, kind === 'png' ? await pdf.embedPng(bytes) : await pdf.embedJpg(bytes));
  }
  return images;
}

const missingLetters = (name: string, { known }: Writer): readonly string[] =>
  [...name].filter((letter) => !known.has(letter.codePointAt(0) ?? 0));

function drawPiece(page: PDFPage, heightMm: number, piece: PieceToPrint, name: string, writer: Writer): void {
  const image = piece.picture === null ? undefined : writer.images.get(piece.picture);
  const matrix = pieceMatrix(piece, heightMm, piece.flipped);
  if (image === undefined) drawEmptyBox(page, heightMm, piece, name, writer);
  else {
    page.pushOperators(
      pushGraphicsState(),
      concatTransformationMatrix(...matrix),
      ...clipToSquare(),
      concatTransformationMatrix(...inBox(image, piece)),
      drawObject(page.node.newXObject('Picture', image.ref)),
      popGraphicsState(),
    );
  }
}

/** How the picture lies in the unit square of its piece, before that is turned or flipped. */
function inBox(
  image: PDFImage,
  piece: PieceToPrint,
): readonly [number, number, number, number, number, number] {
  const box = piece.turned
    ? { widthMm: piece.heightMm, heightMm: piece.widthMm }
    : { widthMm: piece.widthMm, heightMm: piece.heightMm };
  const part = piece.shown ?? { x: 0, y: 0, width: 1, height: 1 };
  const shown = { width: image.width * part.width, height: image.height * part.height };
  const { crop, widthMm, heightMm } = placeInBox(shown, box, piece.fit);
  // A whole picture takes the box; a cropped one sticks out of it on both sides and is clipped.
  const shownAcross = ((widthMm / box.widthMm) * shown.width) / crop.width;
  const shownUp = ((heightMm / box.heightMm) * shown.height) / crop.height;
  // Around the part that is shown the file goes on: clear edges, which print nothing.
  const across = shownAcross / part.width;
  const up = shownUp / part.height;
  const left = (1 - shownAcross) / 2 - part.x * across;
  const bottom = (1 - shownUp) / 2 - (1 - part.y - part.height) * up;
  return [across, 0, 0, up, left, bottom];
}

const clipToSquare = () => [
  moveTo(0, 0),
  lineTo(1, 0),
  lineTo(1, 1),
  lineTo(0, 1),
  closePath(),
  clip(),
  endPath(),
];

/** Nothing is pretended where no file is kept: an outline of true size with the name in it. */
function drawEmptyBox(
  page: PDFPage,
  heightMm: number,
  piece: PieceToPrint,
  name: string,
  { font }: Writer,
): void {
  const across = (piece.turned ? piece.heightMm : piece.widthMm) * POINTS_PER_MM;
  const up = (piece.turned ? piece.widthMm : piece.heightMm) * POINTS_PER_MM;
  const [a, b, c, d, e, f] = pieceMatrix(piece, heightMm, piece.flipped);
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(a / across, b / across, c / up, d / up, e, f),
  );
  page.drawRectangle({
    x: HAIRLINE_POINTS / 2,
    y: HAIRLINE_POINTS / 2,
    width: across - HAIRLINE_POINTS,
    height: up - HAIRLINE_POINTS,
    borderColor: grey,
    borderWidth: HAIRLINE_POINTS,
  });
  if (name !== '') {
    const size = Math.min(14, (0.8 * across) / font.widthOfTextAtSize(name, 1), 0.5 * up);
    page.drawText(name, {
      font,
      size,
      color: grey,
      x: (across - font.widthOfTextAtSize(name, size)) / 2,
      y: (up - size * 0.7) / 2,
    });
  }
  page.pushOperators(popGraphicsState());
}

function drawLabel(
  page: PDFPage,
  heightMm: number,
  piece: PieceToPrint,
  pieces: readonly PieceToPrint[],
  name: string,
  { job, font }: Writer,
): void {
  if (name === '') return;
  const widthMm = font.widthOfTextAtSize(name, LABEL_POINTS) / POINTS_PER_MM;
  const place = labelPlace(
    piece,
    pieces,
    { ...job, heightMm },
    { widthMm, heightMm: LABEL_POINTS / POINTS_PER_MM },
  );
  if (place === null) return;
  page.drawText(name, {
    font,
    size: LABEL_POINTS,
    color: grey,
    x: place.xMm * POINTS_PER_MM,
    // Letters hang a fifth of their height below the line.
    y: (heightMm - place.yMm) * POINTS_PER_MM + LABEL_POINTS * 0.2,
  });
}
