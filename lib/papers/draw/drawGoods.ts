import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block, DrawnGoods, Note } from '@/lib/papers/paper';
import { ACROSS, APART, type DrawingRoom, drawingRows, isMarkNeeded } from './drawDrawings';
import { noteLines } from './drawNotes';
import { drawColumns, gap, gapHigh, linesOf, type Setting, widthOf } from './setting';

const rooms: Readonly<Record<'small' | 'large', DrawingRoom>> = {
  small: { wide: 116, high: 114 },
  large: { wide: 248, high: 222 },
};

/** What is made, drawn with its prints, and told beside it; on a sheet to approve the drawings are large. */
export function drawGoods(setting: Setting, { goods, isLarge }: Extract<Block, { kind: 'goods' }>): void {
  for (const one of goods) {
    const room = roomIn(setting, isLarge ? 'large' : 'small');
    if (isLarge && one.drawings.length > 1) drawLarge(setting, one, room);
    else drawBeside(setting, one, room);
  }
  setting.flow.goTo(setting.flow.y - gapHigh(setting, 4));
}

function drawBeside(setting: Setting, goods: DrawnGoods, room: DrawingRoom): void {
  const whole = widthOf(setting);
  const { wide } = room;
  const across = Math.min(ACROSS, goods.drawings.length);
  const at = across === 0 ? 0 : across * (wide + APART) + 16;
  const widthPt = whole - at;
  const isNumbered = goods.drawings.some((drawing) => isMarkNeeded(setting, drawing, room));
  const drawn = drawingRows(setting, goods.drawings, at, { room, isNumbered });
  drawColumns(setting, [
    { at: 0, widthPt: at, lines: drawn },
    {
      at,
      widthPt,
      lines: [gap(setting, 8), ...wordsOf(setting, goods, widthPt, isNumbered), gap(setting, 8)],
    },
  ]);
}

function roomIn({ closeness }: Setting, size: keyof typeof rooms): DrawingRoom {
  const { wide, high } = rooms[size];
  return { wide: wide * closeness.drawings, high: high * closeness.drawings };
}

function drawLarge(setting: Setting, goods: DrawnGoods, room: DrawingRoom): void {
  const widthPt = widthOf(setting);
  const isNumbered = goods.drawings.some((drawing) => isMarkNeeded(setting, drawing, room));
  const drawn = drawingRows(setting, goods.drawings, widthPt, { room, isNumbered, isSpread: true });
  drawColumns(setting, [
    {
      at: 0,
      widthPt,
      lines: [...drawn, gap(setting, 6), ...wordsOf(setting, goods, widthPt, isNumbered), gap(setting, 10)],
    },
  ]);
}

function wordsOf(
  setting: Setting,
  { heading, lines, prints }: DrawnGoods,
  widthPt: number,
  isNumbered: boolean,
): readonly SetLine[] {
  const marked = ({ lead, text, mark }: DrawnGoods['prints'][number]): Note => ({
    lead: isNumbered && mark !== undefined ? `${mark} ${lead}` : lead,
    text,
  });
  return [
    ...linesOf(setting, heading, { widthPt, size: 10.5, weight: 700 }),
    ...lines.flatMap((text) => linesOf(setting, text, { widthPt, size: 9 })),
    gap(setting, 4),
    ...prints.map(marked).flatMap((note) => [...noteLines(setting, note, widthPt, '\n'), gap(setting, 3)]),
  ];
}
