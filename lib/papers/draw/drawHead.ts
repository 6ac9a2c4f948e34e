import type { SetLine } from '@/lib/lettering/openLettering';
import { heavyLine } from '@/lib/papers/flowPages';
import type { Block } from '@/lib/papers/paper';
import {
  beside,
  type Column,
  drawColumns,
  GREY,
  gap,
  gapHigh,
  linesOf,
  type Setting,
  widthOf,
} from './setting';

const LOGO_WIDE = 130;
const LOGO_HIGH = 46;
const GAP = 14;

/** Who writes: a picture, a name and what it does at one side, where to reach them at the other. */
export function drawHead(
  setting: Setting,
  { name, tagline, lines, logo }: Extract<Block, { kind: 'head' }>,
): void {
  const { flow } = setting;
  const whole = widthOf(setting);
  const picture = setting.pictureOf(logo);
  const scale = picture === null ? 0 : Math.min(LOGO_WIDE / picture.width, LOGO_HIGH / picture.height);
  const shown =
    picture === null ? null : { picture, width: picture.width * scale, height: picture.height * scale };
  const at = shown === null ? 0 : shown.width + GAP;
  const reach = 0.42 * whole;
  const named = whole - at - reach - GAP;
  const columns: readonly Column[] = [
    ...(shown === null
      ? []
      : [
          {
            at: 0,
            widthPt: shown.width,
            lines: [
              {
                high: shown.height,
                draw: (page, { x, top }) => shown.picture.draw(page, { ...shown, x, y: top - shown.height }),
              },
            ],
          } satisfies Column,
        ]),
    {
      at,
      widthPt: named,
      lines: [
        ...linesOf(setting, name, { widthPt: named, size: 15, weight: 700, leading: 1.25 }),
        ...linesOf(setting, tagline, { widthPt: named, size: 9 }),
      ],
    },
    {
      at: at + named + GAP,
      widthPt: reach,
      lines: lines.flatMap((text) => linesOf(setting, text, { widthPt: reach, size: 9, align: 'end' })),
    },
  ];
  drawColumns(setting, columns);
  flow.goTo(flow.y - gapHigh(setting, 7));
  heavyLine(flow);
  flow.goTo(flow.y - gapHigh(setting, 14));
}

/** What the paper is, whom it is for, and its number and days. */
export function drawTitle(
  setting: Setting,
  { title, subject, party, facts }: Extract<Block, { kind: 'title' }>,
): void {
  const { flow, lettering } = setting;
  const whole = widthOf(setting);
  const wide = (texts: readonly string[], weight: 400 | 700) =>
    Math.min(
      0.26 * whole,
      1 + Math.max(0, ...texts.map((text) => lettering.measure(text, { size: 9, weight }))),
    );
  const nameWide = wide(
    facts.map(({ name }) => name),
    400,
  );
  const valueWide = wide(
    facts.map(({ value }) => value),
    700,
  );
  const factsWide = facts.length === 0 ? 0 : nameWide + 8 + valueWide;
  const widthPt = whole - factsWide - (facts.length === 0 ? 0 : 20);
  const forWide = Math.min(0.3 * widthPt, lettering.measure(party?.words ?? '', { size: 11 }) + 0.5);
  drawColumns(setting, [
    {
      at: 0,
      widthPt,
      lines: [
        ...titleLines(setting, title, widthPt),
        ...linesOf(setting, subject, { widthPt, size: 11 }),
        gap(setting, 3),
        ...(party === null
          ? []
          : [
              ...beside(setting, widthPt, [
                {
                  at: 0,
                  widthPt: forWide,
                  lines: linesOf(setting, party.words, { widthPt: forWide, size: 11, colour: GREY }),
                },
                {
                  at: forWide + 4,
                  widthPt: widthPt - forWide - 4,
                  lines: linesOf(setting, party.name, {
                    widthPt: widthPt - forWide - 4,
                    size: 11,
                    weight: 700,
                  }),
                },
              ]),
              ...party.lines.flatMap((text) => linesOf(setting, text, { widthPt, size: 9 })),
            ]),
      ],
    },
    {
      at: whole - factsWide,
      widthPt: factsWide,
      lines: [
        gap(setting, 6),
        ...facts.flatMap(({ name, value }) => [
          ...beside(setting, factsWide, [
            {
              at: 0,
              widthPt: nameWide,
              lines: linesOf(setting, name, { widthPt: nameWide, size: 9, align: 'end', colour: GREY }),
            },
            {
              at: nameWide + 8,
              widthPt: valueWide,
              lines: linesOf(setting, value, { widthPt: valueWide, size: 9, weight: 700 }),
            },
          ]),
          gap(setting, 1),
        ]),
      ],
    },
  ]);
  flow.goTo(flow.y - gapHigh(setting, 12));
}

/** A title of many words is set smaller, for it is not to take the room of what it names. */
function titleLines(setting: Setting, title: string, widthPt: number): readonly SetLine[] {
  const style = { widthPt, weight: 700, leading: 1.15 } as const;
  const large = linesOf(setting, title, { ...style, size: 24 });
  return large.length > 2 ? linesOf(setting, title, { ...style, size: 17 }) : large;
}
