import type { NameFault } from '@/lib/names/namePreview';

/** A fault that says how a size may be meant, with the text that all such rows share. */
type SizeFault = Extract<NameFault, { code: 'unknownSize' | 'severalSizes' | 'twoMeanings' }>;

/** @returns what is wrong with the size of a row; null where nothing can be chosen for it. */
export function sizeFaultOf(faults: readonly NameFault[]): SizeFault | null {
  for (const fault of faults)
    if (fault.code === 'unknownSize' || fault.code === 'severalSizes' || fault.code === 'twoMeanings')
      return fault;
  return null;
}
