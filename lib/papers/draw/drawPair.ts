import type { PDFPage } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { PicturePair } from '@/lib/papers/paper';
import { GREY, highOf, INK, linesOf, type Setting, SMALL } from './setting';

/** Room of both together, points. */
interface PairRoom {
  readonly wide: number;
  readonly high: number;
}

/** Between the two. */
const GAP = 6;
/** Narrower than this they stand one below the other. */
const LEAST_BESIDE = 80;

/** A picture as it lies on the paper, dashed, beside it as it is seen on the piece. */
export function pairLines(setting: Setting, pair: PicturePair, { wide, high }: PairRoom): readonly SetLine[] {
  const isBeside = wide >= LEAST_BESIDE;
  const most = { wide: isBeside ? (wide - GAP) / 2 : wide, high };
  const scale = Math.min(most.wide / pair.widthMm, most.high / pair.heightMm);
  const box = { width: pair.widthMm * scale, height: pair.heightMm * scale };
  const [paper, seen] = [pair.onPaper, pair.asSeen].map(
    (one, at): SetLine => oneLine(setting, pair, { ...one, box, widthPt: most.wide, isDashed: at === 0 }),
  );
  if (paper === undefined || seen === undefined) return [];
  if (!isBeside) return [paper, seen];
  return [
    {
      high: Math.max(paper.high, seen.high),
      draw(page, { x, top }) {
        const [first, second] = setting.isRightToLeft ? [seen, paper] : [paper, seen];
        first.draw(page, { x, top });
        second.draw(page, { x: x + most.wide + GAP, top });
      },
    },
  ];
}

// Helpers

interface One {
  readonly caption: string;
  readonly isFlipped: boolean;
  readonly box: { readonly width: number; readonly height: number };
  readonly widthPt: number;
  readonly isDashed: boolean;
}

function oneLine(
  setting: Setting,
  { name, picture }: PicturePair,
  { caption, isFlipped, box, widthPt, isDashed }: One,
): SetLine {
  const told = linesOf(setting, caption, {
    widthPt,
    size: SMALL,
    align: 'centre',
    colour: GREY,
    leading: 1.15,
  });
  const drawn = setting.pictureOf(picture);
  return {
    high: box.height + 4 + highOf(told) + 3,
    draw(page: PDFPage, { x, top }) {
      const left = x + (widthPt - box.width) / 2;
      const place = { x: left, y: top - box.height - 1, ...box };
      drawn?.draw(page, place, isFlipped);
      page.drawRectangle({
        ...place,
        borderColor: INK,
        borderWidth: 0.8,
        ...(isDashed ? { borderDashArray: [2.5, 2] } : {}),
      });
      // Where the picture cannot be shown its place has its name.
      const named = drawn === null ? linesOf(setting, name, { widthPt: box.width - 4, size: SMALL }) : [];
      let low = top - 4;
      for (const line of named) {
        if (top - low + line.high > box.height) break;
        line.draw(page, { x: left + 2, top: low });
        low -= line.high;
      }
      low = top - box.height - 4;
      for (const line of told) {
        line.draw(page, { x, top: low });
        low -= line.high;
      }
    },
  };
}
