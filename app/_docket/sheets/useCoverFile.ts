'use client';

import { useEffect, useRef, useState } from 'react';
import { saveBytes } from '@/app/_files/saveBytes';
import { writePaper } from '@/app/_papers/writePaper';
import type { Cover } from '@/lib/exports/cover';
import type { TransferState } from './useTransferFile';

interface CoverFile {
  readonly state: TransferState;
  readonly write: (name: string, cover: Cover) => void;
  readonly cancel: () => void;
}

/** Writes the cover page and saves it; ended with the screen. */
export function useCoverFile(): CoverFile {
  const [state, setState] = useState<TransferState>({ kind: 'idle' });
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);
  return {
    state,
    write(name, cover) {
      end.current();
      setState({ kind: 'writing', name, share: 0 });
      end.current = writePaper(cover, (news) => {
        if (news.kind !== 'written') return setState({ ...news, name });
        saveBytes(name, news.bytes, 'application/pdf');
        const none: readonly string[] = [];
        const nothingOfPictures = { lost: none, otherSpace: none, unreadable: none, converted: none };
        setState({ kind: 'written', facts: { name, bytes: news.bytes.length, ...nothingOfPictures } });
      });
    },
    cancel() {
      end.current();
      if (state.kind === 'writing' || state.kind === 'notStarted')
        setState({ kind: 'cancelled', name: state.name });
    },
  };
}
