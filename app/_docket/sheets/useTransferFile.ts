'use client';

import { useEffect, useRef, useState } from 'react';
import { saveBlob } from '@/app/_files/saveBlob';
import { type TransferNews, writeTransfers } from '@/app/_transfers/writeTransfers';
import type { WrittenFacts } from '@/app/_words/docket/transferWords';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { ownEntry } from '@/lib/job/ownEntry';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { JobInput } from '@/shared/schemas/request';

/** How far the file to print is. */
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

interface TransferFile {
  readonly state: TransferState;
  readonly write: (name: string, job: SheetsToPrint, input: JobInput) => void;
  readonly cancel: () => void;
}

/** Writes the file to print and saves it; one at a time, ended with the screen. */
export function useTransferFile(readFile: (id: string) => Promise<StoredFile | null>): TransferFile {
  const [state, setState] = useState<TransferState>({ kind: 'idle' });
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);

  const write: TransferFile['write'] = (name, job, input) => {
    end.current();
    setState({ kind: 'writing', name, share: 0 });
    end.current = writeTransfers(job, {
      readFile: async (artworkId) => {
        const picture = ownEntry(input.artworks, artworkId)?.picture;
        return (picture ? await readFile(picture.fileId) : null)?.content ?? null;
      },
      onNews: (news) => {
        if (news.kind === 'written') saveBlob(name, news.file);
        setState(stateOf(news, name, input));
      },
    });
  };
  return {
    state,
    write,
    cancel() {
      end.current();
      if (state.kind === 'writing' || state.kind === 'notStarted')
        setState({ kind: 'cancelled', name: state.name });
    },
  };
}

function stateOf(news: TransferNews, name: string, input: JobInput): TransferState {
  switch (news.kind) {
    case 'progress':
      return { kind: 'writing', name, share: news.share };
    case 'written': {
      const nameOf = (key: string) => ownEntry(input.artworks, key)?.name ?? key;
      const noted = (note: string) =>
        [...news.notes].flatMap(([key, found]) => (found === note ? [nameOf(key)] : []));
      const facts: WrittenFacts = {
        name,
        bytes: news.file.size,
        lost: news.lost.map(nameOf),
        otherSpace: noted('otherSpace'),
        unreadable: noted('unreadable'),
        converted: noted('converted'),
      };
      return { kind: 'written', facts };
    }
    case 'failed':
    case 'notStarted':
      return { ...news, name };
    default:
      return news satisfies never;
  }
}
