'use client';

import { useState } from 'react';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveBlob } from '@/app/_files/saveBlob';
import type { CopyActions } from '@/app/_store/copies/copyActions';
import { formatterFor } from '@/app/_words/formatter';
import { copySavedWords } from '@/app/_words/store/contentsWords';
import { notInCopyWords } from '@/app/_words/store/copyFileWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { copyName } from './copyName';
import { deviceName } from './deviceName';

/** What making a copy needs of the documents. */
export type CopySource = Pick<CopyActions, 'makeCopy'>;

export type CopyMaking =
  | { readonly kind: 'idle' }
  | { readonly kind: 'making' }
  | { readonly kind: 'made'; readonly sentence: string; readonly lacks: readonly string[] }
  | { readonly kind: 'failed' };

/** How a copy came out: `lacking` files that are not here any more, or not at all. */
export type CopySaved = 'whole' | 'lacking' | 'failed';

/** Makes a copy of everything and saves it as one file. */
export function useMakingCopy({ makeCopy }: CopySource) {
  const formatter = formatterFor(useTextContext());
  const [making, setMaking] = useState<CopyMaking>({ kind: 'idle' });
  const make = async (isBeforeReplacing = false): Promise<CopySaved> => {
    setMaking({ kind: 'making' });
    try {
      const { file, holds, leftOut, notNoted } = await makeCopy('everything', deviceName.recall() || null);
      const name = copyName(new Date(), isBeforeReplacing);
      saveBlob(name, file);
      setMaking({
        kind: 'made',
        sentence: copySavedWords(name, { holds, bytes: file.size }, formatter),
        lacks: [
          ...(leftOut.length > 0 ? [notInCopyWords(leftOut, formatter)] : []),
          ...(notNoted === null
            ? []
            : [`The copy is whole, but its day could not be noted here. ${saveFailureWords[notNoted]}`]),
        ],
      });
      return leftOut.length > 0 ? 'lacking' : 'whole';
    } catch (error) {
      setMaking({ kind: 'failed' });
      // Told to whoever looks for the cause; the maker is told what to do.
      reportError(error);
      return 'failed';
    }
  };
  return {
    making,
    make: () => void make(),
    seen: () => setMaking({ kind: 'idle' }),
    makeAndWait: () => make(),
    /** Of what is about to make way for another copy. */
    makeFirst: () => make(true),
  };
}
