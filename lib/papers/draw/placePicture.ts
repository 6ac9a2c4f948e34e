import {
  clip,
  concatTransformationMatrix,
  drawObject,
  endPath,
  PDFDict,
  type PDFDocument,
  PDFObjectParser,
  type PDFPage,
  PDFRawStream,
  PDFRef,
  popGraphicsState,
  pushGraphicsState,
  rectangle,
} from '@cantoo/pdf-lib';
import { DamagedPicture, type EmbeddedPicture } from '@/lib/embedding/embeddedPicture';
import type { PdfObjects } from '@/lib/embedding/pdfFile';
import { uprightMatrix } from '@/lib/embedding/uprightMatrix';
import { writePicture } from '@/lib/embedding/writePicture';
import { uprightSize } from '@/lib/picture/pictureHeader';

interface Box {
  readonly x: number;
  /** Lower edge. */
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A picture that can be shown any number of times. */
export interface DrawPicture {
  readonly width: number;
  readonly height: number;
  /**
   * Over the whole of a box, in its middle: what of another shape reaches beyond is cut, as it is in the print.
   *
   * @param isFlipped its left and right changed
   */
  readonly draw: (page: PDFPage, box: Box, isFlipped?: boolean) => void;
}

/**
 * Puts a picture into a file, with its data as they came: the page shows it smaller, and nothing is unpacked.
 *
 * @returns null where its data are damaged
 */
export async function placePicture(pdf: PDFDocument, picture: EmbeddedPicture): Promise<DrawPicture | null> {
  let number: number;
  try {
    number = await writePicture(fileIn(pdf), picture, () => undefined);
  } catch (error) {
    // The caller tells whose data these are.
    if (error instanceof DamagedPicture) return null;
    throw error;
  }
  const ref = PDFRef.of(number);
  const { width, height } = uprightSize(picture.stored, picture.orientation);
  return {
    width,
    height,
    draw(page, box, isFlipped = false) {
      const scale = Math.max(box.width / width, box.height / height);
      const [wide, high] = [width * scale, height * scale];
      page.pushOperators(
        pushGraphicsState(),
        rectangle(box.x, box.y, box.width, box.height),
        clip(),
        endPath(),
        ...(isFlipped ? [concatTransformationMatrix(-1, 0, 0, 1, 2 * box.x + box.width, 0)] : []),
        concatTransformationMatrix(
          wide,
          0,
          0,
          high,
          box.x + (box.width - wide) / 2,
          box.y + (box.height - high) / 2,
        ),
        concatTransformationMatrix(...uprightMatrix(picture.orientation)),
        drawObject(page.node.newXObject('Picture', ref)),
        popGraphicsState(),
      );
    },
  };
}

/** The objects of the library's file, for whoever writes them as text. */
function fileIn({ context }: PDFDocument): PdfObjects {
  const parsed = (text: string) =>
    PDFObjectParser.forBytes(new TextEncoder().encode(`${text} `), context).parseObject();
  return {
    reserve: () => context.nextRef().objectNumber,
    object: (number, body) => context.assign(PDFRef.of(number), parsed(body)),
    begin(number, dictionary) {
      const pieces: Uint8Array[] = [];
      return {
        write: (bytes) => void pieces.push(bytes.slice()),
        end() {
          const dict = parsed(`<< ${dictionary} >>`);
          if (!(dict instanceof PDFDict)) throw new Error('a picture came without its dictionary');
          context.assign(PDFRef.of(number), PDFRawStream.of(dict, joined(pieces)));
        },
      };
    },
  };
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
