import type { SizeMm } from '@/lib/job/tidyLength';
import { thresholds } from '@/shared/tables/thresholds';

/** @returns whether a print is too small to be one: LAY-01 says so, and nothing else can be said of it. */
export const isSpeck = ({ widthMm, heightMm }: SizeMm): boolean =>
  Math.min(widthMm, heightMm) < thresholds.leastPrint.value;
