import type { MaxRectsPacker as Packer } from 'maxrects-packer';
import { seededRandom } from '@/lib/packing/seededRandom';
import type { PackedPiece, Paper } from './paper';

export const LIBRARY = 'the library on the same pieces';

export interface Library {
  /** @returns sheets used, the largest piece laid first */
  readonly once: (paper: Paper, pieces: readonly PackedPiece[]) => number;
  readonly best: (paper: Paper, pieces: readonly PackedPiece[]) => number;
}

/** A general-purpose packing library (maxrects-packer, MIT). Its main file has no names in Node; its module file has. */
export async function loadLibrary(): Promise<Library> {
  const path = 'maxrects-packer/dist/maxrects-packer.mjs';
  const { MaxRectsPacker } = (await import(path)) as { readonly MaxRectsPacker: typeof Packer };
  // It wants whole numbers: lengths go in as hundredths of a millimetre.
  const pack = (paper: Paper, pieces: readonly PackedPiece[]): number => {
    const packer = new MaxRectsPacker(paper.widthMm * 100, paper.heightMm * 100, 0, {
      smart: false,
      pot: false,
      square: false,
      allowRotation: true,
      border: 0,
    });
    for (const { id, widthMm, heightMm } of pieces) packer.add(widthMm * 100, heightMm * 100, id);
    return packer.bins.length;
  };
  return {
    once: (paper, pieces) => pack(paper, largestFirst(pieces)),
    best: (paper, pieces) => {
      const random = seededRandom(1);
      const orders = Array.from({ length: 199 }, () =>
        pieces
          .map((piece) => ({ piece, key: random() }))
          .sort((a, b) => a.key - b.key)
          .map(({ piece }) => piece),
      );
      return Math.min(pack(paper, largestFirst(pieces)), ...orders.map((order) => pack(paper, order)));
    },
  };
}

const largestFirst = (pieces: readonly PackedPiece[]) =>
  pieces.toSorted((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);
