import type { SetLine } from '@/lib/lettering/openLettering';
import { beside, GREY, linesOf, type Setting, SMALL, space } from './setting';

const HEADING = 11;
const GAP = 14;
/** What stands at the end of a heading's line has this share of it at most. */
const ASIDE = 0.55;

interface Headed {
  readonly heading: string;
  readonly aside: string;
}

/** @returns what a step is called, and at the end of the line how much or how long. */
export function headingLines(
  setting: Setting,
  { heading, aside }: Headed,
  widthPt: number,
): readonly SetLine[] {
  const wanted = setting.lettering.measure(aside, { size: SMALL }) + 0.5;
  const asideWide = aside === '' ? 0 : Math.min(wanted, widthPt * ASIDE);
  const headWide = widthPt - asideWide - (aside === '' ? 0 : GAP);
  return [
    ...beside(setting, widthPt, [
      {
        at: 0,
        widthPt: headWide,
        lines: linesOf(setting, heading, { widthPt: headWide, size: HEADING, weight: 700 }),
      },
      {
        at: headWide + GAP,
        widthPt: asideWide,
        lines: linesOf(setting, aside, { widthPt: asideWide, size: SMALL, colour: GREY, align: 'end' }),
      },
    ]),
    space(2),
  ];
}
