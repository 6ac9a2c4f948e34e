import { rgb } from '@cantoo/pdf-lib';
import type { Lettering } from '@/lib/lettering/openLettering';
import { drawRule } from '@/lib/papers/drawRule';
import { type Flow, heavyLine, tearLine } from '@/lib/papers/flowPages';
import type { Cover } from './cover';

/** Room of the numerals in the margin. */
export const NUMERAL_ROOM = 34;
const INK = rgb(0, 0, 0);
export const GREY = [0.3, 0.3, 0.3] as const;
const NAME_ROOM = 118;

/** What the page is, whose it is, and how many sheets. */
export function drawHead(flow: Flow, { banner, name, under, total }: Cover, lettering: Lettering): void {
  const { page, left, right } = flow;
  const bannerWide = lettering.measure(banner, { size: 11, weight: 700 }) + 20;
  page.drawRectangle({
    x: left,
    y: flow.y - 22,
    width: bannerWide,
    height: 22,
    borderColor: INK,
    borderWidth: 1.8,
  });
  lettering.drawLine(page, banner, { x: left + 10, y: flow.y - 15, size: 11, weight: 700 });
  const figureWide = Math.max(
    lettering.measure(total.figure, { size: 34, weight: 700 }),
    lettering.measure(total.words, { size: 10 }),
  );
  const top = flow.y - 34;
  const figure = { x: right - figureWide, widthPt: figureWide, align: 'right' } as const;
  lettering.drawLine(page, total.figure, { ...figure, y: flow.y - 50, size: 34, weight: 700 });
  lettering.drawLine(page, total.words, { ...figure, y: flow.y - 66, size: 10 });
  const room = right - left - figureWide - 20;
  const named = lettering.drawParagraph(page, name, {
    x: left,
    top,
    widthPt: room,
    size: 22,
    weight: 700,
    leading: 1.2,
    align: 'left',
  });
  const end = lettering.drawParagraph(page, under, { x: left, top: named - 1, widthPt: room, size: 10.5 });
  flow.goTo(Math.min(end, top - 38) - 8);
  heavyLine(flow);
  flow.goTo(flow.y - 12);
}

/** Heading of a part with its numeral in the margin. */
export function drawHeading(flow: Flow, numeral: string, heading: string, lettering: Lettering): void {
  lettering.drawLine(flow.page, numeral, { x: flow.left, y: flow.y - 20, size: 24 });
  lettering.drawLine(flow.page, heading, {
    x: flow.left + NUMERAL_ROOM,
    y: flow.y - 15,
    size: 13.5,
    weight: 700,
  });
  flow.goTo(flow.y - 24);
}

/** What to choose in the printer's window, and a line of 100 mm to measure. */
export function drawSettings(
  flow: Flow,
  { heading, rows, rule }: Cover['settings'],
  lettering: Lettering,
): void {
  drawHeading(flow, '1', heading, lettering);
  const x = flow.left + NUMERAL_ROOM;
  const valueX = x + NAME_ROOM;
  const widthPt = flow.right - valueX;
  for (const { name, value, isTold } of rows) {
    const place = { widthPt, size: 10.5, weight: isTold ? 700 : 400 } as const;
    const nameHigh = lettering.measureParagraph(name, { widthPt: NAME_ROOM - 10, size: 10.5 });
    const high = Math.max(nameHigh, lettering.measureParagraph(value, place));
    if (high > flow.room) flow.newPage();
    lettering.drawParagraph(flow.page, name, {
      x,
      top: flow.y,
      widthPt: NAME_ROOM - 10,
      size: 10.5,
      colour: GREY,
    });
    lettering.drawParagraph(flow.page, value, { ...place, x: valueX, top: flow.y, align: 'left' });
    flow.goTo(flow.y - high - 2);
  }
  if (flow.room < 60) flow.newPage();
  drawRule(flow, x, lettering);
  flow.goTo(
    lettering.drawParagraph(flow.page, rule, { x, top: flow.y - 2, widthPt: flow.right - x, size: 10.5 }) -
      10,
  );
  tearLine(flow);
  flow.goTo(flow.y - 10);
}

/** What to mind at the press, in a frame. */
export function drawWatch(flow: Flow, { heading, sentences }: Cover['watch'], lettering: Lettering): void {
  const text = sentences.join('\n');
  const place = { widthPt: flow.right - flow.left - 24, size: 10.5 };
  const high = lettering.measureParagraph(text, place) + 36;
  if (high > flow.room) flow.newPage();
  const { page, left, right } = flow;
  page.drawRectangle({
    x: left,
    y: flow.y - high,
    width: right - left,
    height: high,
    borderColor: INK,
    borderWidth: 1.4,
  });
  lettering.drawLine(page, heading, { x: left + 12, y: flow.y - 18, size: 11.5, weight: 700 });
  lettering.drawParagraph(page, text, { ...place, x: left + 12, top: flow.y - 25 });
  flow.goTo(flow.y - high);
}
