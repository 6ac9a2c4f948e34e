import type { SetLine } from '@/lib/lettering/openLettering';
import { drawRule } from '@/lib/papers/drawRule';
import type { Block } from '@/lib/papers/paper';
import { POINTS_PER_MM } from '@/shared/units';
import {
  type Column,
  drawColumns,
  GREY,
  gap,
  gapHigh,
  highOf,
  INK,
  leftOf,
  linesOf,
  type Setting,
  SMALL,
  TEXT,
  widthOf,
} from './setting';

type Of<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

const UNDER_HEADING = 60;

export function drawText(setting: Setting, { text, isStrong }: Of<'text'>): void {
  const widthPt = widthOf(setting);
  const lines = linesOf(
    setting,
    text,
    isStrong ? { widthPt, size: 11.5, weight: 700 } : { widthPt, isTyped: true },
  );
  // A heading does not stand at the foot of a page, away from what it names.
  if (isStrong && setting.flow.room < highOf(lines) + UNDER_HEADING) setting.flow.newPage();
  drawColumns(setting, [{ at: 0, widthPt, lines: [...lines, gap(setting, isStrong ? 4 : 8)] }]);
}

/** The figure a paper is about, large. */
export function drawAmount(setting: Setting, { words, figure, under }: Of<'amount'>): void {
  const widthPt = widthOf(setting);
  drawColumns(setting, [
    {
      at: 0,
      widthPt,
      lines: [
        ...linesOf(setting, words, { widthPt, size: 10.5 }),
        ...linesOf(setting, figure, { widthPt, size: 26, weight: 700, leading: 1.25 }),
        ...linesOf(setting, under, { widthPt, size: 10.5 }),
        gap(setting, 14),
      ],
    },
  ]);
}

/** A line of 100 mm with what it is for. */
export function drawRuleBlock(setting: Setting, { words }: Of<'rule'>): void {
  const { flow, lettering } = setting;
  const widthPt = widthOf(setting);
  const said = [...linesOf(setting, words, { widthPt, size: SMALL, colour: GREY }), gap(setting, 10)];
  if (flow.room < 34 + highOf(said)) flow.newPage();
  drawRule(flow, leftOf(setting, 20, 100 * POINTS_PER_MM), lettering);
  drawColumns(setting, [{ at: 0, widthPt, lines: said }]);
}

const SIGN_ROOM = 28;
const SIGN_GAP = 18;

/** Lines to sign on: the first is the longest. */
export function drawSign(setting: Setting, block: Of<'sign'>): void {
  drawColumns(setting, signColumns(setting, block));
}

/** @returns the room that lines to sign on take. */
export const signHigh = (setting: Setting, block: Of<'sign'>): number =>
  Math.max(0, ...signColumns(setting, block).map(({ lines }) => highOf(lines)));

function signColumns(setting: Setting, { labels }: Of<'sign'>): readonly Column[] {
  const free = widthOf(setting) - SIGN_GAP * (labels.length - 1);
  const shares = labels.map((_, at) => (at === 0 ? 1.6 : at === labels.length - 1 ? 1 : 1.25));
  const all = shares.reduce((sum, share) => sum + share, 0);
  let at = 0;
  return labels.map((label, place): Column => {
    const widthPt = (free * (shares[place] ?? 1)) / all;
    const line: SetLine = {
      high: SIGN_ROOM,
      draw: (page, { x, top }) =>
        page.drawLine({
          start: { x, y: top - SIGN_ROOM + 3 },
          end: { x: x + widthPt, y: top - SIGN_ROOM + 3 },
          thickness: 0.8,
          color: INK,
        }),
    };
    const column = { at, widthPt, lines: [line, ...linesOf(setting, label, { widthPt, size: SMALL })] };
    at += widthPt + SIGN_GAP;
    return column;
  });
}

/** Short texts in three columns, row by row, so that a page is read before the next. */
export function drawList(setting: Setting, { heading, items }: Of<'list'>): void {
  const whole = widthOf(setting);
  const widthPt = (whole - 2 * 16) / 3;
  const head = [...linesOf(setting, heading, { widthPt: whole, weight: 700 }), gap(setting, 3)];
  if (setting.flow.room < highOf(head) + 3 * TEXT) setting.flow.newPage();
  drawColumns(setting, [{ at: 0, widthPt: whole, lines: head }]);
  for (let from = 0; from < items.length; from += 3) {
    drawColumns(
      setting,
      items.slice(from, from + 3).map((text, at) => ({
        at: at * (widthPt + 16),
        widthPt,
        lines: linesOf(setting, text, { widthPt, size: 9 }),
      })),
    );
  }
  setting.flow.goTo(setting.flow.y - gapHigh(setting, 10));
}
