import type { SetLine } from '@/lib/lettering/openLettering';
import type { Note } from '@/lib/papers/paper';
import {
  type Column,
  drawColumns,
  gap,
  gapHigh,
  highOf,
  INK,
  inOneLine,
  linesOf,
  type Setting,
  widthOf,
} from './setting';

const GAP = 22;

/** @returns a text that begins with bold words, in one line with it or above it. */
export function noteLines(
  setting: Setting,
  { lead, text }: Note,
  widthPt: number,
  between: ' ' | '\n' = ' ',
): readonly SetLine[] {
  const begin = inOneLine(lead);
  const whole = [begin, text].filter((part) => part !== '').join(between);
  return linesOf(setting, whole, { widthPt, size: 9, lead: begin, isTyped: true });
}

/**
 * Texts in two columns that are read one after the other, and as even as they can be; one text alone has the whole
 * width. A page holds whole texts in both; what does not find room goes on in two columns on the next.
 *
 * @param keep room that is wanted beneath, so that what follows does not stand alone on a page
 */
export function drawNotes(setting: Setting, notes: readonly Note[], keep: number): void {
  const { flow } = setting;
  const whole = widthOf(setting);
  const widthPt = notes.length === 1 ? whole : (whole - GAP) / 2;
  const places = [0, widthPt + GAP];
  let rest = notes.map((note) => [...noteLines(setting, note, widthPt), gap(setting, 4)]);
  const columnsOf = (texts: typeof rest): readonly Column[] =>
    evenly(texts).map((lines, at) => ({ at: places[at] ?? 0, widthPt, lines }));
  const high = (count: number) =>
    Math.max(...columnsOf(rest.slice(0, count)).map(({ lines }) => highOf(lines)));
  const all = high(rest.length) + keep;
  // Little room at the foot of a page is left empty, for terms that stand together are read together.
  if (all > flow.room && all <= flow.wholeRoom && flow.room < flow.wholeRoom / 9) flow.newPage();
  while (rest.length > 0) {
    let count = rest.length;
    // What is signed goes along with the last text.
    if (count > 1 && high(count) + keep > flow.room) count -= 1;
    while (count > 1 && high(count) > flow.room) count -= 1;
    drawColumns(setting, columnsOf(rest.slice(0, count)));
    rest = rest.slice(count);
    if (rest.length > 0) flow.newPage();
  }
}

/** From the frame to its texts, points. */
const PAD = 8;

/**
 * Texts in two columns within a frame, so that nobody overlooks them.
 *
 * @returns false where they are longer than a page: then nothing is drawn
 */
export function drawBoxed(setting: Setting, notes: readonly Note[]): boolean {
  const { flow } = setting;
  const whole = widthOf(setting);
  const widthPt = (whole - 2 * PAD - GAP) / 2;
  const columns = evenly(notes.map((note) => [...noteLines(setting, note, widthPt), gap(setting, 4)])).map(
    (lines, at): Column => ({ at: PAD + at * (widthPt + GAP), widthPt, lines }),
  );
  const high = Math.max(...columns.map(({ lines }) => highOf(lines))) + 2 * PAD - 4;
  if (high > flow.wholeRoom) return false;
  if (high > flow.room) flow.newPage();
  const top = flow.y;
  flow.goTo(top - PAD + 2);
  drawColumns(setting, columns);
  flow.page.drawRectangle({
    ...{ x: flow.left, y: top - high, width: whole, height: high },
    borderColor: INK,
    borderWidth: 1.4,
  });
  flow.goTo(top - high - gapHigh(setting, 8));
  return true;
}

/** Parts texts into two columns in their order, the first as little longer than the second as can be. */
function evenly(texts: readonly (readonly SetLine[])[]): readonly (readonly SetLine[])[] {
  const whole = texts.reduce((sum, lines) => sum + highOf(lines), 0);
  let first = 0;
  let used = 0;
  while (first < texts.length && used < whole / 2 - 1) {
    used += highOf(texts[first] ?? []);
    first += 1;
  }
  // The last text may have been more than what was wanted.
  const last = highOf(texts[first - 1] ?? []);
  if (first > 1 && whole - used + last < used) first -= 1;
  return [texts.slice(0, first).flat(), texts.slice(first).flat()];
}
