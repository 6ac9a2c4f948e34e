'use client';

import { saveBlob } from '@/app/_files/saveBlob';
import { type TransferNews, writeTransfers } from '@/app/_transfers/writeTransfers';
import type { WrittenFacts } from '@/app/_words/docket/transferWords';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { ownEntry } from '@/lib/job/ownEntry';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { JobInput } from '@/shared/schemas/request';
import { type TransferState, useWrittenFile } from './useWrittenFile';

interface TransferFile {
  readonly state: TransferState;
  readonly write: (name: string, job: SheetsToPrint, input: JobInput) => void;
  readonly cancel: () => void;
}

/** Writes the file to print and saves it. */
export function useTransferFile(readFile: (id: string) => Promise<StoredFile | null>): TransferFile {
  const { state, begin, cancel } = useWrittenFile();
  return {
    state,
    cancel,
    write: (name, job, input) =>
      begin(name, (tell) =>
        writeTransfers(job, {
          readFile: async (artworkId) => {
            const picture = ownEntry(input.artworks, artworkId)?.picture;
            return (picture ? await readFile(picture.fileId) : null)?.content ?? null;
          },
          onNews: (news) => {
            if (news.kind === 'written') saveBlob(name, news.file);
            tell(stateOf(news, name, input));
          },
        }),
      ),
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
