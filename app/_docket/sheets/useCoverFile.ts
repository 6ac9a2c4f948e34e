'use client';

import { saveBlob } from '@/app/_files/saveBlob';
import { writePaper } from '@/app/_papers/writePaper';
import type { Cover } from '@/lib/exports/cover';
import { type TransferState, useWrittenFile } from './useWrittenFile';

interface CoverFile {
  readonly state: TransferState;
  readonly write: (name: string, cover: Cover) => void;
  readonly cancel: () => void;
}

/** Writes the cover page and saves it. */
export function useCoverFile(): CoverFile {
  const { state, begin, cancel } = useWrittenFile();
  return {
    state,
    cancel,
    write: (name, cover) =>
      begin(name, (tell) =>
        writePaper({ kind: 'cover', cover }, (news) => {
          if (news.kind !== 'written') return tell({ ...news, name });
          saveBlob(name, news.file);
          const none: readonly string[] = [];
          const nothingOfPictures = { lost: none, otherSpace: none, unreadable: none, converted: none };
          tell({ kind: 'written', facts: { name, bytes: news.file.size, ...nothingOfPictures } });
        }),
      ),
  };
}
