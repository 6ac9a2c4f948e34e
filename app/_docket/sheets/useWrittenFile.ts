'use client';

import { useEffect, useRef, useState } from 'react';
import type { WrittenFacts } from '@/app/_words/docket/transferWords';

/** How far a file is. */
export type TransferState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'writing'; readonly name: string; readonly share: number }
  | { readonly kind: 'written'; readonly facts: WrittenFacts }
  | { readonly kind: 'cancelled'; readonly name: string }
  | { readonly kind: 'failed'; readonly name: string; readonly why: string }
  | {
      readonly kind: 'notStarted';
      readonly name: string;
      readonly isGone: boolean;
      readonly again: () => void;
    };

interface WrittenFile {
  readonly state: TransferState;
  /** @param start tells how far the file is, and returns what ends it at once */
  readonly begin: (name: string, start: (tell: (state: TransferState) => void) => () => void) => void;
  readonly cancel: () => void;
}

/** A file that is written elsewhere; one at a time, ended with the screen. */
export function useWrittenFile(): WrittenFile {
  const [state, setState] = useState<TransferState>({ kind: 'idle' });
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);
  return {
    state,
    begin(name, start) {
      end.current();
      setState({ kind: 'writing', name, share: 0 });
      end.current = start(setState);
    },
    cancel() {
      end.current();
      if (state.kind === 'writing' || state.kind === 'notStarted')
        setState({ kind: 'cancelled', name: state.name });
    },
  };
}
