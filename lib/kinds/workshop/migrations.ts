import { eachEntry } from '@/lib/stored/eachEntry';
import { isPlainObject } from '@/lib/stored/sameValue';
import { usualCharges } from '@/shared/schemas/charges';
import { untoldHabits } from '@/shared/schemas/habits';
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

/** Version 3 to 4: how lists are suggested; what is asked once for the workshop, and what machines are rated for. */
export const workshopWithListRule = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        printers: eachEntry(body.printers, (printer) => ({ ...printer, ratedSheetsPerMonth: null })),
        presses: eachEntry(body.presses, (press) => ({ ...press, rating: unrated })),
        habits: untoldHabits,
      }
    : body;
