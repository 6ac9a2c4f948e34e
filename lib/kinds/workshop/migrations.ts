import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';
import { usualCharges } from '@/shared/schemas/charges';
import { untoldHabits } from '@/shared/schemas/habits';
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

/**
 * What every printer had until somebody types its own. Without it dark pictures took about half the ink that printers
 * lay down, so the old figure is not kept. A fact of this step: dated with the day it was set down, and left as it is
 * when the typical value moves.
 */
const FIRST_BLACK_SHARE = { value: 0.5, unit: 'share', date: '2026-11-27', origin: 'typical' };

/** Version 5 to 6: how much of the grey a printer prints with black, and what is chosen in its window. */
export const workshopWithBlackShare = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        printers: eachEntry(body.printers, (printer) => ({
          ...printer,
          blackShare: FIRST_BLACK_SHARE,
          lightInks: null,
          longestPageMm: null,
          colourProfile: null,
        })),
        sheets: eachEntry(body.sheets, (sheet) => ({ ...sheet, mediaSetting: null })),
      }
    : body;
