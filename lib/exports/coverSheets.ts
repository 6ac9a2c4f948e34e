import type { Lettering } from '@/lib/lettering/openLettering';
import { type Flow, tearLine } from '@/lib/papers/flowPages';
import type { Cover, CoverSheet } from './cover';
import { drawHeading, GREY, NUMERAL_ROOM } from './coverParts';
import { DRAWING_WIDTH, drawCoverSheet, drawingHeight, drawingScale } from './drawCoverSheet';

const HEADING_HIGH = 20;
const GAP = 24;
const KEY_ROOM = 22;

/** Every kind of sheet: its drawing, and beside it what lies on it. */
export function drawSheets(flow: Flow, cover: Cover, lettering: Lettering): void {
  const [first] = cover.sheets;
  if (first !== undefined && flow.room < 46 + HEADING_HIGH + drawingHeight(first)) flow.newPage();
  drawHeading(flow, '2', cover.sheetsHeading, lettering);
  const x = flow.left + NUMERAL_ROOM;
  const end = lettering.drawParagraph(flow.page, cover.sheetsNote, {
    x,
    top: flow.y + 2,
    widthPt: flow.right - x,
    size: 9.5,
    colour: GREY,
  });
  flow.goTo(end - 6);
  cover.sheets.forEach((sheet, place) => {
    if (place > 0 && flow.room < heightOf(sheet, flow, lettering) && flow.room < flow.wholeRoom)
      flow.newPage();
    else if (place > 0) {
      tearLine(flow);
      flow.goTo(flow.y - 10);
    }
    drawSheet(flow, sheet, cover.continued, lettering);
  });
  tearLine(flow);
  flow.goTo(flow.y - 12);
}

/** A part that goes over several pages may begin on any that has room for its drawing and some prints. */
function heightOf(sheet: CoverSheet, flow: Flow, lettering: Lettering): number {
  const widthPt = wordsRoom(flow);
  const prints = sheet.prints.map((print) => printHeight(print, widthPt, lettering));
  const words = factsHeight(sheet, widthPt, lettering) + prints.reduce((sum, high) => sum + high, 0);
  return HEADING_HIGH + 12 + Math.max(drawingHeight(sheet), Math.min(words, flow.wholeRoom / 3));
}

function drawSheet(flow: Flow, sheet: CoverSheet, continued: string, lettering: Lettering): void {
  const x = flow.left + NUMERAL_ROOM;
  const wordsX = x + DRAWING_WIDTH + GAP;
  const widthPt = wordsRoom(flow);
  drawSheetHeading(flow, sheet.heading, sheet.copies, lettering);
  const { page, y: top } = flow;
  drawCoverSheet(page, sheet, { x, top, scale: drawingScale(sheet) }, lettering);
  let low = top - drawingHeight(sheet);
  for (const fact of sheet.facts) {
    const place = { widthPt, size: 10 };
    flow.goTo(lettering.drawParagraph(flow.page, fact, { ...place, x: wordsX, top: flow.y }) - 2);
  }
  flow.goTo(flow.y - 3);
  for (const print of sheet.prints) {
    if (printHeight(print, widthPt, lettering) > flow.room) {
      flow.newPage();
      drawSheetHeading(flow, `${sheet.heading}, ${continued}`, sheet.copies, lettering);
      low = flow.y;
    }
    drawPrint(flow, print, wordsX, lettering);
  }
  flow.goTo(Math.min(flow.y, low) - 10);
}

function drawSheetHeading(flow: Flow, heading: string, copies: string, lettering: Lettering): void {
  const x = flow.left + NUMERAL_ROOM;
  const place = { y: flow.y - 12, size: 11.5, weight: 700, widthPt: flow.right - x, x } as const;
  lettering.drawLine(flow.page, heading, place);
  lettering.drawLine(flow.page, copies, { ...place, align: 'right' });
  flow.goTo(flow.y - HEADING_HIGH);
}

type Print = CoverSheet['prints'][number];

const NAME = { size: 10.5, weight: 700 } as const;
const DETAIL = { size: 9.5, colour: GREY };

function printHeight({ name, details }: Print, widthPt: number, lettering: Lettering): number {
  const room = widthPt - KEY_ROOM;
  return (
    lettering.measureParagraph(name, { ...NAME, widthPt: room }) +
    details.reduce((sum, text) => sum + lettering.measureParagraph(text, { ...DETAIL, widthPt: room }), 0) +
    5
  );
}

const factsHeight = ({ facts }: CoverSheet, widthPt: number, lettering: Lettering): number =>
  facts.reduce((sum, fact) => sum + lettering.measureParagraph(fact, { widthPt, size: 10 }) + 2, 3);

function drawPrint(flow: Flow, { key, name, details }: Print, x: number, lettering: Lettering): void {
  const { page } = flow;
  const widthPt = wordsRoom(flow) - KEY_ROOM;
  lettering.drawParagraph(page, key, { ...NAME, x, top: flow.y, widthPt: KEY_ROOM });
  const place = { x: x + KEY_ROOM, widthPt, align: 'left' } as const;
  let top = lettering.drawParagraph(page, name, { ...NAME, ...place, top: flow.y });
  for (const text of details) top = lettering.drawParagraph(page, text, { ...DETAIL, ...place, top });
  flow.goTo(top - 5);
}

const wordsRoom = ({ left, right }: Flow): number => right - left - NUMERAL_ROOM - DRAWING_WIDTH - GAP;
