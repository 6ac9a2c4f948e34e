import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { placementPlaces } from '@/lib/job/places';
import type { LyingPrint } from '@/lib/layout/lyingPrints';
import type { Finding } from '@/shared/finding';
import type { Sheet } from '@/shared/schemas/workshop';
import { fitsWithin } from '@/shared/units';
import { fits, inset, turned } from './sheetShare';

/** LAY-10: a sheet longer than the longest page the printer's window takes; nothing is said where nobody told it. */
const longSheets: Rule = ({ resolved }) => {
  const { sheet, printer } = resolved;
  const longestMm = printer.longestPageMm;
  if (sheet.form === 'roll' || longestMm === null || fitsWithin(longSide(sheet), longestMm)) return [];
  const other = resolved.workshop.sheets.find(
    (one) =>
      one.form === 'cut' &&
      one.paper === 'transfer' &&
      fitsWithin(longSide(one), longestMm) &&
      holdsAll(resolved, one),
  );
  return [
    makeFinding({
      id: 'LAY-10',
      severity: 'stop',
      variant: 'longSheet',
      waivable: false,
      where: { document: 'job', path: ['sheetId'] },
      found: { value: longSide(sheet), unit: 'mm' },
      limit: { value: longestMm, unit: 'mm' },
      facts: { sheet: sheet.name, printer: printer.name, lengthMm: longSide(sheet), longestMm },
      fix:
        other === undefined
          ? null
          : {
              label: 'useOnly',
              facts: { name: other.name },
              changes: [{ document: 'job', path: ['sheetId'], value: other.id }],
            },
    }),
  ];
};

/** Nobody is sent from one stop to the next. */
function holdsAll(job: ResolvedJob, sheet: Sheet): boolean {
  const reach = inset(sheet, job.printer.marginMm);
  return placementPlaces(job).every(({ prints }) =>
    prints.every(({ print }) => fits(print, reach) || fits(turned(print), reach)),
  );
}

/** However a sheet is typed, its long side runs through the printer. */
const longSide = ({ widthMm, heightMm }: Pick<Sheet, 'widthMm' | 'heightMm'>): number =>
  Math.max(widthMm, heightMm);

/** LAY-10: a print of a roll that is longer than the printer's window takes; told once, for the longest of them. */
export function longRollPrints(
  { sheet, printer, workshop }: ResolvedJob,
  prints: readonly LyingPrint[],
): readonly Finding[] {
  const longestMm = printer.longestPageMm;
  if (sheet.form !== 'roll' || longestMm === null) return [];
  const lengthMm = prints.reduce((longest, one) => Math.max(longest, one.lengthMm), 0);
  if (fitsWithin(lengthMm, longestMm)) return [];
  const path = ['sheets', workshop.sheets.findIndex(({ id }) => id === sheet.id), 'heightMm'];
  return [
    makeFinding({
      id: 'LAY-10',
      severity: 'stop',
      variant: 'longPrint',
      waivable: false,
      where: { document: 'workshop', path },
      found: { value: lengthMm, unit: 'mm' },
      limit: { value: longestMm, unit: 'mm' },
      facts: { sheet: sheet.name, printer: printer.name, lengthMm, longestMm },
      fix: {
        label: 'shortenPrints',
        facts: { longestMm },
        changes: [{ document: 'workshop', path, value: longestMm }],
      },
    }),
  ];
}

export const pageLengthRules: readonly Rule[] = [longSheets];
