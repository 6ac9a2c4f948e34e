import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';
import { usualCharges } from '@/shared/schemas/charges';
import { untoldHabits } from '@/shared/schemas/habits';
import { untoldPapers, untoldSeller, usualQuoting } from '@/shared/schemas/seller';
import { usualChosenBreaks } from '@/shared/schemas/sellingRule';
import { unrated } from '@/shared/schemas/workshop';

/** Version 1 to 2: which side a printer prints is asked, and every sheet was transfer paper. */
export const workshopWithPaper = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        printers: eachEntry(body.printers, (printer) => ({ ...printer, printedSide: null })),
        sheets: eachEntry(body.sheets, (sheet) => ({ ...sheet, paper: 'transfer' })),
      }
    : body;

/** Version 2 to 3: rolls, a record of ink, terms of selling; until then all paper was cut and nothing noted. */
export const workshopWithInkRecord = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        sheets: eachEntry(body.sheets, (sheet) => ({ ...sheet, form: 'cut', rollLengthMm: null })),
        channels: eachEntry(body.channels, (channel) => ({
          ...channel,
          shareOfRetail: null,
          sellingMinutesPerPiece: null,
          cashInDays: null,
        })),
        policy: isPlainObject(body.policy)
          ? { ...body.policy, taxRounding: 'document', upChargeStep: null, charges: usualCharges }
          : body.policy,
        inkRecord: { refills: [], runs: [] },
      }
    : body;

/** The breaks every workshop began with: nobody chose them. */
const FIRST_BREAKS = [1, 6, 12, 24, 48];

/**
 * Version 3 to 4: how lists are suggested, whether the maker or the sums choose their breaks, and what a selling day
 * costs. Breaks that were changed by hand stay the maker's own. What is asked once for the workshop, and what machines
 * are rated for, nobody has told yet.
 */
export const workshopWithListRule = (body: unknown): unknown =>
  isPlainObject(body) && isPlainObject(body.policy)
    ? {
        ...body,
        printers: eachEntry(body.printers, (printer) => ({ ...printer, ratedSheetsPerMonth: null })),
        presses: eachEntry(body.presses, (press) => ({ ...press, rating: unrated })),
        habits: untoldHabits,
        channels: eachEntry(body.channels, (channel) => ({ ...channel, dayCost: null, dayPieces: null })),
        policy: {
          ...body.policy,
          listRule: 'capped',
          breaks: sameValue(body.policy.breaks, FIRST_BREAKS) ? null : body.policy.breaks,
          chosenBreaks: usualChosenBreaks,
        },
      }
    : body;

/** Facts of the step to version 6, dated with the day they were set down: they stay when the typical value moves. */
const blackShareFound = (value: number) =>
  ({ value, unit: 'share', date: '2026-11-27', origin: 'typical' }) as const;

/**
 * Version 5 to 6: how much of the grey a printer prints with black, and what is chosen in its window. Until then all of it
 * counted as black, which put dark pictures at about half the ink that printers lay down, so the typical share comes in
 * its place. Not where refills have measured the level: they did so with all grey in black, and the two belong together.
 */
export function workshopWithBlackShare(body: unknown): unknown {
  if (!isPlainObject(body)) return body;
  const laydown = isPlainObject(body.rates) ? body.rates.laydown : null;
  const isMeasured = isPlainObject(laydown) && laydown.origin === 'measured';
  return {
    ...body,
    printers: eachEntry(body.printers, (printer) => ({
      ...printer,
      blackShare: blackShareFound(isMeasured ? 1 : 0.5),
      lightInks: null,
      longestPageMm: null,
      colourProfile: null,
    })),
    sheets: eachEntry(body.sheets, (sheet) => ({ ...sheet, mediaSetting: null })),
  };
}

/** When most who work beside something else are at their bench, from memory: evenings, and the morning of a day off. */
const beginsAt = (weekday: number) => (weekday < 5 ? 18 * 60 : 9 * 60);

/**
 * Version 6 to 7: when the bench is free, from a time to a time instead of so many hours a day. Hours stay what they
 * were; where they begin nobody had said, so it is the usual time, or as much earlier as they need to end by midnight.
 * Who sells, how papers are written and what is usual of a quote nobody has told yet.
 */
export function workshopWithBlocks(body: unknown): unknown {
  if (!isPlainObject(body)) return body;
  const { freeHours, ...rest } = body;
  return {
    ...rest,
    blocks: Array.isArray(freeHours)
      ? freeHours.flatMap((hours: unknown, weekday) => blockOf(hours, weekday))
      : (freeHours ?? null),
    daysOff: [],
    seller: untoldSeller,
    papers: untoldPapers,
    quoting: usualQuoting,
  };
}

function blockOf(hours: unknown, weekday: number): readonly unknown[] {
  if (typeof hours !== 'number') return [{ weekday, hours }];
  const minutes = hours * 60;
  if (minutes < 1) return [];
  return [
    {
      id: `block-${weekday + 1}`,
      weekday,
      fromMinute: Math.max(0, Math.min(beginsAt(weekday), Math.floor(1440 - minutes))),
      minutes,
    },
  ];
}
