import type { PDFPage } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Drawing, PicturePair } from '@/lib/papers/paper';
import { drawingRows } from './drawDrawings';
import { drawMarkF } from './drawMarkF';
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
/** Of the room beside each other, for what lies on the paper where the piece is drawn. */
const PAPER_SHARE = 0.36;

/**
 * A picture as it lies on the paper, dashed, beside it as it is seen on the piece. Where it cannot be shown an F stands
 * for it, on the paper and on the piece as that is drawn.
 */
export function pairLines(
  setting: Setting,
  pair: PicturePair,
  drawings: readonly Drawing[],
  { wide, high }: PairRoom,
): readonly SetLine[] {
  const isDrawn = setting.pictureOf(pair.picture) === null && drawings.length > 0;
  const isBeside = wide >= LEAST_BESIDE;
  const paperWide = !isBeside ? wide : isDrawn ? (wide - GAP) * PAPER_SHARE : (wide - GAP) / 2;
  const seenWide = isBeside ? wide - GAP - paperWide : wide;
  const paper = oneLine(setting, pair, pair.onPaper, { wide: paperWide, high, isDashed: true });
  const seen = isDrawn
    ? drawingRows(setting, drawings.slice(0, 1), seenWide, { room: { wide: seenWide, high } })
    : [oneLine(setting, pair, pair.asSeen, { wide: seenWide, high, isDashed: false })];
  const [first = paper] = seen;
  const under = linesOf(setting, pair.under, { widthPt: wide, size: SMALL, leading: 1.15 });
  if (!isBeside) return [paper, first, ...under];
  return [
    {
      high: Math.max(paper.high, first.high),
      draw(page, { x, top }) {
        const [paperX, seenX] = setting.isRightToLeft ? [x + seenWide + GAP, x] : [x, x + paperWide + GAP];
        paper.draw(page, { x: paperX, top });
        first.draw(page, { x: seenX, top });
      },
    },
    ...under,
  ];
}

// Helpers

interface OneRoom extends PairRoom {
  readonly isDashed: boolean;
}

function oneLine(
  setting: Setting,
  { picture, widthMm, heightMm }: PicturePair,
  { caption, isFlipped, reads }: PicturePair['onPaper'],
  { wide, high, isDashed }: OneRoom,
): SetLine {
  const scale = Math.min(wide / widthMm, high / heightMm);
  const box = { width: widthMm * scale, height: heightMm * scale };
  const told = linesOf(setting, caption, {
    widthPt: wide,
    size: SMALL,
    align: 'centre',
    colour: GREY,
    leading: 1.15,
  });
  const drawn = setting.pictureOf(picture);
  return {
    high: box.height + 4 + highOf(told) + 3,
    draw(page: PDFPage, { x, top }) {
      const place = { x: x + (wide - box.width) / 2, y: top - box.height - 1, ...box };
      if (drawn === null) drawMarkF(page, place, reads);
      else drawn.draw(page, place, isFlipped);
      page.drawRectangle({
        ...place,
        borderColor: INK,
        borderWidth: 0.8,
        ...(isDashed ? { borderDashArray: [2.5, 2] } : {}),
      });
      let low = top - box.height - 4;
      for (const line of told) {
        line.draw(page, { x, top: low });
        low -= line.high;
      }
    },
  };
}
