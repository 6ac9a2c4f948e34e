'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { sameValue } from '@/lib/merging/sameValue';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { picturesOf } from '@/lib/papers/picturesOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { PaperSettings } from '@/shared/schemas/seller';
import type { PaperReply } from './messages';
import { pictureForPaper } from './pictureForPaper';
import { writePaper } from './writePaper';

/** How far the file of a paper is. */
export type PaperFileState =
  | { readonly kind: 'none' | 'writing' }
  | { readonly kind: 'written'; readonly made: MadeFile }
  | { readonly kind: 'failed'; readonly why: string }
  /** The part of the app that writes it could not be fetched; it is written by itself once it can. */
  | { readonly kind: 'notStarted'; readonly isGone: boolean; readonly again: () => void };

interface MadeFile {
  readonly source: PaperSource;
  readonly file: Blob;
  readonly pages: number;
  /** Pictures that could not be shown. */
  readonly lost: readonly string[];
  /** Letters that the type has not. */
  readonly missing: Extract<PaperReply, { readonly kind: 'written' }>['missing'];
}

interface PaperTools {
  readonly words: PaperSettings['words'];
  readonly readFile: (id: string) => Promise<StoredFile | null>;
}

export interface PaperWriter {
  /** The same object for as long as nothing on it changes. */
  readonly source: PaperSource | null;
  readonly state: PaperFileState;
  /** The file of a source: the one made beforehand where it is of the same. */
  readonly write: (source: PaperSource) => Promise<MadeFile>;
  readonly tryAgain: () => void;
}

/** Typing settles before a worker is begun for it. */
const PAUSE_MS = 700;

/**
 * Writes the file of a paper beforehand, so that it is there when it is asked for: a browser hands a file on only in the
 * tap itself.
 *
 * @param source null where there is nothing to write
 */
export function usePaperFile(source: PaperSource | null, { words, readFile }: PaperTools): PaperWriter {
  const [state, setState] = useState<PaperFileState>({ kind: 'none' });
  const [turn, setTurn] = useState(0);
  const steady = useSteady(source);
  const latest = useRef<MadeFile | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: trying again is another turn of the same
  useEffect(() => {
    latest.current = null;
    if (steady === null || typeof Worker === 'undefined') return setState({ kind: 'none' });
    setState({ kind: 'writing' });
    let end: () => void = () => undefined;
    let isLeft = false;
    const begin = async () => {
      const pictures = await picturesFor(steady, words, readFile);
      if (isLeft) return;
      end = writePaper({ kind: 'paper', source: steady, words, pictures }, (news) => {
        if (news.kind !== 'written') return setState(news);
        const { file, pages, lost, missing } = news;
        latest.current = { source: steady, file, pages, lost, missing };
        setState({ kind: 'written', made: latest.current });
      });
    };
    const pause = setTimeout(() => {
      begin().catch((error: unknown) => setState({ kind: 'failed', why: messageOf(error) }));
    }, PAUSE_MS);
    return () => {
      isLeft = true;
      clearTimeout(pause);
      end();
    };
  }, [steady, words, readFile, turn]);

  const write = useCallback(
    async (wanted: PaperSource): Promise<MadeFile> => {
      const before = latest.current;
      if (before !== null && sameValue(before.source, wanted)) return before;
      const pictures = await picturesFor(wanted, words, readFile);
      return new Promise((resolve, reject) => {
        const end = writePaper({ kind: 'paper', source: wanted, words, pictures }, (news) => {
          if (news.kind === 'written') {
            const { file, pages, lost, missing } = news;
            return resolve({ source: wanted, file, pages, lost, missing });
          }
          end();
          reject(new PaperNotWritten(news.kind === 'failed' ? news.why : null));
        });
      });
    },
    [words, readFile],
  );
  return { source: steady, state, write, tryAgain: () => setTurn((now) => now + 1) };
}

/** A file that a worker did not write. */
export class PaperNotWritten extends Error {
  override readonly name = 'PaperNotWritten';
  /** @param why null where the part of the app that writes it could not be fetched */
  constructor(readonly why: string | null) {
    super(why ?? 'the part of the app that writes papers could not be fetched');
  }
}

// Helpers

/** @returns the files of the pictures on a paper; one that is not here any more leaves a named place. */
async function picturesFor(
  source: PaperSource,
  words: PaperSettings['words'],
  readFile: PaperTools['readFile'],
): Promise<ReadonlyMap<string, Blob>> {
  const ids = picturesOf(paperOf(source, labelsFor(source.body.language, words)));
  const found = new Map<string, Blob>();
  // One after the other: each drawing takes the page a moment.
  for (const id of ids) {
    const file = await readFile(id);
    if (file !== null) found.set(id, await pictureForPaper(file.content));
  }
  return found;
}

/** @returns the source first given for as long as later ones are equal to it. */
function useSteady(source: PaperSource | null): PaperSource | null {
  const [kept, setKept] = useState(source);
  if (sameValue(kept, source)) return kept;
  setKept(source);
  return source;
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
