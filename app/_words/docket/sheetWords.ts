import type { Formatter } from '@/app/_words/formatter';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import type { RollUsed } from '@/lib/grid/rollUsed';
import type { SharedLook } from '@/lib/layout/layoutSearch';
import type { SheetsPlan } from '@/lib/layout/plannedSheets';
import { formatNumber } from '@/shared/formatNumber';
import type { Sheet, Workshop } from '@/shared/schemas/workshop';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { usFluidOuncesFromMl } from '@/shared/units';
import type { AnswerWords } from './answerWords';

/** Sizes that people put before “sheets”; others are called sheets alone. */
const spoken: Readonly<Partial<Record<keyof typeof sheetSizes, string>>> = {
  letter: 'letter',
  legal: 'legal',
  tabloid: 'tabloid',
  a5: 'A5',
  a4: 'A4',
  a3: 'A3',
  a2: 'A2',
};

/** Paper is cut to within this. */
const SAME_MM = 0.6;

/** A count of sheets with their size before it, where it is one that has a name: “53 letter sheets”. */
export function sheetsInWords(count: number, paper: Sheet, formatter: Formatter): string {
  const known = Object.entries(sheetSizes).find(
    ([, { widthMm, heightMm }]) =>
      Math.abs(widthMm - paper.widthMm) <= SAME_MM && Math.abs(heightMm - paper.heightMm) <= SAME_MM,
  )?.[0];
  const size = Object.entries(spoken).find(([key]) => key === known)?.[1];
  return formatter.count(count, size === undefined ? 'sheet' : `${size} sheet`);
}

/** A volume in the maker's unit. */
export const volumeWords = (mL: number, units: Workshop['units'], locale: string, maxDecimals = 1): string =>
  units.volume === 'floz'
    ? `${formatNumber(usFluidOuncesFromMl(mL), locale, { maxDecimals: maxDecimals + 1 })} fl oz`
    : `${formatNumber(mL, locale, { maxDecimals })} mL`;

interface SheetsFacts {
  readonly costs: CostSheet;
  readonly paper: Sheet;
  readonly used: RollUsed | null;
  /** Share of the good pieces' paper; null while it is worked out. */
  readonly wasteShare: number | null;
  readonly units: Workshop['units'];
  readonly locale: string;
}

/** How much paper and ink the job takes, spoiled ones and tests in it, and how much of the paper is left over. */
export function sheetsAnswerWords(
  { costs, paper, used, wasteShare, units, locale }: SheetsFacts,
  formatter: Formatter,
): AnswerWords {
  const ink = volumeWords(wholeJob(costs, 'inkMl'), units, locale, 0);
  const left =
    wasteShare === null ? '' : `; ${formatter.number(wasteShare * 100, 0)} % of the paper is left over`;
  return {
    key:
      used === null
        ? sheetsInWords(expectedSheets(costs), paper, formatter)
        : `${formatter.number(used.lengthMm / 1000, 1)} m of roll`,
    after: ` and ${ink} of ink${left}`,
  };
}

/** What is being looked for in the sheets that prints share, and what came of it. */
export function sharedLookWords(
  { isLooking, spared: { sheets, rollMm } }: SharedLook,
  formatter: Formatter,
): string {
  const found =
    sheets > 0
      ? `${formatter.count(sheets, 'sheet')} fewer found`
      : rollMm !== null && rollMm > SAME_MM
        ? `${formatter.number(rollMm / 1000, 2)} m less roll found`
        : null;
  const wanted = rollMm === null ? 'fewer sheets' : 'less roll';
  if (found === null) return isLooking ? `Looking for ${wanted}…` : `No layout with ${wanted} was found.`;
  return isLooking ? `${found}. Still looking…` : `${found}; the price follows.`;
}

/** How far a number of sheets is from the least possible, of any layout and of those that are cut straight through. */
export function leastSheetsWords(
  { count, lowerBound, guillotineBound }: Pick<SheetsPlan, 'count' | 'lowerBound' | 'guillotineBound'>,
  formatter: Formatter,
): string {
  if (lowerBound >= count) return 'no layout needs fewer';
  const least = `${formatter.number(lowerBound, 0)} is the least possible`;
  if (guillotineBound === null || guillotineBound > count) return least;
  return guillotineBound === count
    ? `none that is cut straight through needs fewer; ${least}`
    : `${least}, ${formatter.number(guillotineBound, 0)} where sheets are cut straight through`;
}
