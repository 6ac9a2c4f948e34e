import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { SizeMm } from '@/lib/job/tidyLength';
import { fitsWithin } from '@/shared/units';

/**
 * Whether a print has its sheet for itself. Without borders where it goes no other way and the printer can.
 *
 * @returns `none` where not one fits
 */
export function sheetShare(job: ResolvedJob, print: SizeMm): 'none' | 'alone' | 'shared' {
  const { sheet, printer, workshop } = job;
  const bordered = inset(sheet, printer.marginMm);
  const area = !fitsEitherWay(print, bordered) && printer.borderless ? sheet : bordered;
  if (!fitsEitherWay(print, area)) return 'none';
  return twoFit(print, area, workshop.policy.gutterMm) ? 'shared' : 'alone';
}

/** @returns what is left of an area inside a margin on all four sides; may be negative. */
export const inset = ({ widthMm, heightMm }: SizeMm, marginMm: number): SizeMm => ({
  widthMm: widthMm - 2 * marginMm,
  heightMm: heightMm - 2 * marginMm,
});

export const turned = ({ widthMm, heightMm }: SizeMm): SizeMm => ({ widthMm: heightMm, heightMm: widthMm });

export const fits = (size: SizeMm, room: SizeMm): boolean =>
  fitsWithin(size.widthMm, room.widthMm) && fitsWithin(size.heightMm, room.heightMm);

const fitsEitherWay = (size: SizeMm, room: SizeMm): boolean => fits(size, room) || fits(turned(size), room);

/** Any sheet with more than one piece has two that lie side by side or one above the other. */
function twoFit(print: SizeMm, area: SizeMm, gutterMm: number): boolean {
  const ways = [print, turned(print)];
  return ways.some((first) =>
    ways.some((second) => {
      const beside: SizeMm = {
        widthMm: first.widthMm + gutterMm + second.widthMm,
        heightMm: Math.max(first.heightMm, second.heightMm),
      };
      const stacked: SizeMm = {
        widthMm: Math.max(first.widthMm, second.widthMm),
        heightMm: first.heightMm + gutterMm + second.heightMm,
      };
      return fits(beside, area) || fits(stacked, area);
    }),
  );
}
