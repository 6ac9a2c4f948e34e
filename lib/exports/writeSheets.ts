import {
  clip,
  closePath,
  concatTransformationMatrix,
  drawObject,
  endPath,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFImage,
  type PDFPage,
  PrintScaling,
  popGraphicsState,
  pushGraphicsState,
} from '@cantoo/pdf-lib';
import { placeInBox } from '@/lib/artwork/placeInBox';
import { POINTS_PER_MM, pieceMatrix } from './pieceMatrix';
import type { PieceToPrint, SheetsToPrint } from './sheetsToPrint';

/**
 * Writes sheets as a file that prints at true size: a page is as large as the paper, pictures lie where the layout
 * has them, at their own resolution. Nothing else is drawn, for whatever lies on a transfer ends on the cloth. The file asks
 * the printer's window for no scaling.
 */
export async function writeSheets(job: SheetsToPrint): Promise<Uint8Array> {
  // Without a date of its own the same sheets give the same file.
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(job.title);
  pdf.setCreator('Pressminute');
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const images = await embedAll(pdf, job);
  for (const { pieces, heightMm } of job.sheets) {
    const page = pdf.addPage([job.widthMm * POINTS_PER_MM, heightMm * POINTS_PER_MM]);
    for (const piece of pieces) {
      const image = piece.picture === null ? undefined : images.get(piece.picture);
      if (image !== undefined) drawPiece(page, heightMm, piece, image);
    }
  }
  return pdf.save();
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

function drawPiece(page: PDFPage, heightMm: number, piece: PieceToPrint, image: PDFImage): void {
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(...pieceMatrix(piece, heightMm, piece.flipped)),
    ...clipToSquare(),
    concatTransformationMatrix(...inBox(image, piece)),
    drawObject(page.node.newXObject('Picture', image.ref)),
    popGraphicsState(),
  );
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
