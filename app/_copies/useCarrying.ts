'use client';

import { useState } from 'react';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveBlob } from '@/app/_files/saveBlob';
import { canShare, shareFile } from '@/app/_files/shareFile';
import type { CopyActions } from '@/app/_store/copies/copyActions';
import { formatterFor } from '@/app/_words/formatter';
import { carriedWords } from '@/app/_words/store/carriedWords';
import { notInCopyWords } from '@/app/_words/store/copyFileWords';
import { carriedName } from './copyName';
import { deviceName } from './deviceName';
import { holdingsOfPlan } from './holdingsOfPlan';

/** What carrying needs of the documents. */
export type CarryStore = Pick<CopyActions, 'makeCopy' | 'lookAtCopy'>;

/** One thing of the maker's, by what it is called. */
export interface Carried {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
}

/** A file of one thing that is made, and what became of it. */
interface CarriedFile {
  readonly kind: 'ready';
  readonly file: File;
  /** What is in it. */
  readonly held: string;
  /** What is not in it; null where all is. */
  readonly lacks: string | null;
  /** Null where it waits to be handed on. */
  readonly done: 'saved' | 'shared' | null;
}

type Carrying =
  | { readonly kind: 'idle' }
  | { readonly kind: 'making'; readonly name: string }
  | CarriedFile
  | { readonly kind: 'failed' };

/** Makes a file of one thing with all that hangs on it, and hands it on: saved at once where nothing can be shared. */
export function useCarrying(store: CarryStore) {
  const formatter = formatterFor(useTextContext());
  const [carrying, setCarrying] = useState<Carrying>({ kind: 'idle' });
  const carry = async (what: Carried) => {
    setCarrying({ kind: 'making', name: what.name });
    try {
      const made = await store.makeCopy({ kind: what.kind, id: what.id }, deviceName.recall() || null);
      const file = new File([made.file], carriedName(what.name, new Date()), { type: 'application/zip' });
      // What is told is what can be read of it, and not what was meant.
      const look = await store.lookAtCopy(file);
      const holds = look.state === 'copy' ? holdingsOfPlan(look.plan) : made.holds;
      const isForSharing = canShare(file);
      if (!isForSharing) saveBlob(file.name, file);
      setCarrying({
        kind: 'ready',
        file,
        held: carriedWords(what, holds, file.size, formatter),
        lacks: made.leftOut.length > 0 ? notInCopyWords(made.leftOut, formatter) : null,
        done: isForSharing ? null : 'saved',
      });
    } catch (error) {
      setCarrying({ kind: 'failed' });
      // Told to whoever looks for the cause; the maker is told what to do.
      reportError(error);
    }
  };
  const send = async (ready: CarriedFile) => {
    const outcome = await shareFile(ready.file);
    if (outcome === 'stopped') return;
    // Where the browser refuses in the end, the file is saved: it is made already.
    if (outcome === 'cannot') saveBlob(ready.file.name, ready.file);
    setCarrying({ ...ready, done: outcome === 'shared' ? 'shared' : 'saved' });
  };
  const save = (ready: CarriedFile) => {
    saveBlob(ready.file.name, ready.file);
    setCarrying({ ...ready, done: 'saved' });
  };
  return {
    carrying,
    carry: (what: Carried) => void carry(what),
    send: (ready: CarriedFile) => void send(ready),
    save,
  };
}
