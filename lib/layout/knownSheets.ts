import type { KnownLayouts, PackedSheets } from '@/shared/packedSheets';
import type { SharedQuestion } from './sharedQuestion';

/** @returns the layout that was found before for the same question; null where there is none. */
export function knownSheets(known: KnownLayouts | undefined, { key }: SharedQuestion): PackedSheets | null {
  return known !== undefined && Object.hasOwn(known, key) ? (known[key] ?? null) : null;
}
