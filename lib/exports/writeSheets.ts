import { type ColourNote, DamagedPicture, type EmbeddedPicture } from '@/lib/embedding/embeddedPicture';
import { type PdfFile, pdfFile, pdfNumber, pdfText } from '@/lib/embedding/pdfFile';
import { type Matrix, uprightMatrix } from '@/lib/embedding/uprightMatrix';
import { writePicture } from '@/lib/embedding/writePicture';
import { type PixelSize, uprightSize } from '@/lib/picture/pictureHeader';
import { POINTS_PER_MM } from '@/shared/units';
import { pieceInBox } from './pieceInBox';
import { matrixWords, pieceMatrix } from './pieceMatrix';
import type { PieceToPrint, SheetsToPrint } from './sheetsToPrint';
import { type WasteTools, wasteWriter } from './writeWaste';

interface SheetTools extends WasteTools {
  /** Takes the file from its first byte to its last. */
  readonly sink: (bytes: Uint8Array) => void;
  /** Brings a picture when its turn comes; null where it cannot be read. */
  readonly pictureOf: (key: string) => Promise<EmbeddedPicture | null>;
  /** Hears how far the picture at a place in the order of pictures is, 0–1. */
  readonly goOn: (picture: number, share: number) => void;
}

interface WrittenSheets {
  /** Keys of pictures that could not be read or are damaged: their places are empty. */
  readonly lost: readonly string[];
  readonly notes: ReadonlyMap<string, ColourNote>;
}

/** @returns the keys of the pictures on some sheets, in the order they are written. */
export const picturesOn = ({ sheets }: SheetsToPrint): readonly string[] => [
  ...new Set(sheets.flatMap(({ pieces }) => pieces.flatMap(({ picture }) => picture ?? []))),
];

/**
 * Writes sheets as a file that prints at true size: a page is as large as the paper, pictures lie where the layout has
 * them, at their own resolution. Nothing else is drawn, for whatever lies on a transfer ends on the cloth, but what the
 * maker asks for in waste that is cut off. The file asks the printer's window for no scaling. Without a date, the same
 * sheets give the same file.
 */
export async function writeSheets(job: SheetsToPrint, tools: SheetTools): Promise<WrittenSheets> {
  const pdf = pdfFile(tools.sink);
  const [root, info, tree] = [pdf.reserve(), pdf.reserve(), pdf.reserve()];
  const images = new Map<string, Image>();
  const notes = new Map<string, ColourNote>();
  const lost: string[] = [];
  for (const [at, key] of picturesOn(job).entries()) {
    const picture = await tools.pictureOf(key);
    const number = picture && (await numberOf(pdf, picture, (share) => tools.goOn(at, share)));
    if (picture === null || number === null) {
      lost.push(key);
      continue;
    }
    images.set(key, {
      number,
      name: `P${at + 1}`,
      size: uprightSize(picture.stored, picture.orientation),
      upright: uprightMatrix(picture.orientation),
    });
    if (picture.note !== null) notes.set(key, picture.note);
  }
  const writeWaste = wasteWriter(pdf, tools);
  const pages: number[] = [];
  for (const sheet of job.sheets) {
    pages.push(...(await writePages({ pdf, tree, widthMm: job.widthMm, images, writeWaste }, sheet)));
  }
  pdf.object(
    tree,
    `<< /Type /Pages /Count ${pages.length} /Kids [${pages.map((page) => `${page} 0 R`).join(' ')}] >>`,
  );
  pdf.object(
    root,
    `<< /Type /Catalog /Pages ${tree} 0 R /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>`,
  );
  pdf.object(info, `<< /Title ${pdfText(job.title)} /Creator ${pdfText('Pressminute')} >>`);
  pdf.end(root, info);
  return { lost, notes };
}

interface Image {
  readonly number: number;
  readonly name: string;
  readonly size: PixelSize;
  readonly upright: Matrix;
}

async function numberOf(
  pdf: PdfFile,
  picture: EmbeddedPicture,
  goOn: (share: number) => void,
): Promise<number | null> {
  try {
    return await writePicture(pdf, picture, goOn);
  } catch (error) {
    // The caller tells whose data these are.
    if (error instanceof DamagedPicture) return null;
    throw error;
  }
}

interface PageTools {
  readonly pdf: PdfFile;
  readonly tree: number;
  readonly widthMm: number;
  readonly images: ReadonlyMap<string, Image>;
  readonly writeWaste: ReturnType<typeof wasteWriter>;
}

/** Sheets that are alike share the drawing of their art. */
async function writePages(
  { pdf, tree, widthMm, images, writeWaste }: PageTools,
  { count, heightMm, pieces, waste }: SheetsToPrint['sheets'][number],
): Promise<readonly number[]> {
  const used = pieces.flatMap((piece) => {
    const image = images.get(piece.picture ?? '');
    return image === undefined ? [] : [{ piece, image }];
  });
  const art = pdf.reserve();
  const stream = pdf.begin(art, '');
  stream.write(
    new TextEncoder().encode(used.map(({ piece, image }) => drawing(piece, image, heightMm)).join('')),
  );
  stream.end();
  const names = new Map(used.map(({ image }) => [image.name, image.number]));
  const objects = [...names].map(([name, number]) => `/${name} ${number} 0 R`);
  const box = [widthMm, heightMm].map((side) => pdfNumber(side * POINTS_PER_MM)).join(' ');
  const pages: number[] = [];
  for (let at = 0; at < count; at += 1) {
    const beside = waste === undefined ? null : await writeWaste(waste, at, heightMm);
    const contents = beside === null ? `${art} 0 R` : `[${art} 0 R ${beside.contents} 0 R]`;
    const all = [...objects, ...(beside?.objects ?? [])].join(' ');
    const page = pdf.reserve();
    pdf.object(
      page,
      `<< /Type /Page /Parent ${tree} 0 R /MediaBox [0 0 ${box}] /Resources << /XObject << ${all} >> >> /Contents ${contents} >>`,
    );
    pages.push(page);
  }
  return pages;
}

/** Clipped to its box, so that no part of a cropped picture lies beside it. */
const drawing = (piece: PieceToPrint, { name, size, upright }: Image, heightMm: number): string =>
  [
    'q',
    matrixWords(pieceMatrix(piece, heightMm, piece.flipped)),
    '0 0 1 1 re W n',
    matrixWords(pieceInBox(size, piece)),
    matrixWords(upright),
    `/${name} Do`,
    'Q\n',
  ].join('\n');
