import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block } from '@/lib/papers/paper';
import { TICK_SIDE, tickLines } from './drawTicks';
import { beside, drawColumns, gap, highOf, INK, linesOf, type Setting, SMALL, widthOf } from './setting';

const PAD = 9;

/** What the customer may choose between, each in a box with a square to tick. What was asked has the thick frame. */
export function drawChoices(setting: Setting, { heading, boxes }: Extract<Block, { kind: 'choices' }>): void {
  const whole = widthOf(setting);
  const wide = whole / boxes.length;
  const widthPt = wide - 2 * PAD;
  const labelWide = widthPt - TICK_SIDE - PAD;
  const set = boxes.map(({ label, figure, lines }) => [
    gap(setting, PAD - 2),
    ...beside(setting, widthPt, [
      { at: 0, widthPt: labelWide, lines: linesOf(setting, label, { widthPt: labelWide, weight: 700 }) },
      { at: widthPt - TICK_SIDE, widthPt: TICK_SIDE, lines: tickLines(setting, TICK_SIDE) },
    ]),
    ...linesOf(setting, figure, { widthPt, size: 14, weight: 700, leading: 1.25 }),
    ...lines.flatMap((text) => linesOf(setting, text, { widthPt, size: SMALL })),
    gap(setting, PAD - 2),
  ]);
  const high = Math.max(...set.map(highOf));
  const row: SetLine = {
    high,
    draw(page, { x, top }) {
      const leftOf = (at: number) => x + (setting.isRightToLeft ? boxes.length - 1 - at : at) * wide;
      const frame = (at: number, borderWidth: number) =>
        page.drawRectangle({
          x: leftOf(at),
          y: top - high,
          width: wide,
          height: high,
          borderColor: INK,
          borderWidth,
        });
      set.forEach((lines, at) => {
        frame(at, 0.8);
        let low = top;
        for (const line of lines) {
          line.draw(page, { x: leftOf(at) + PAD, top: low });
          low -= line.high;
        }
      });
      // Over the thin lines of its neighbours.
      boxes.forEach(({ isAsked }, at) => {
        if (isAsked) frame(at, 2.2);
      });
    },
  };
  const head = linesOf(setting, heading, { widthPt: whole, size: 11.5, weight: 700 });
  drawColumns(setting, [{ at: 0, widthPt: whole, lines: [...head, gap(setting, 4), row, gap(setting, 10)] }]);
}
