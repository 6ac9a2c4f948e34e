'use client';

import { useEffect, useRef, useState } from 'react';
import { saveBlob } from '@/app/_files/saveBlob';
import { writePaper } from '@/app/_papers/writePaper';
import { foreignLettersWords } from '@/app/_words/names/sizeFormWords';
import type { SizeFormBody } from '@/lib/papers/bodies/sizeFormPaper';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { PaperSettings } from '@/shared/schemas/seller';

/** How far the form to print is. */
export type SizeFormFile =
  | { readonly kind: 'idle' | 'writing' }
  /** Told with it: letters that the type has not. */
  | { readonly kind: 'saved'; readonly letters: string }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'notStarted'; readonly isGone: boolean; readonly again: () => void };

interface FormTools {
  readonly words: PaperSettings['words'];
  readonly readFile: (id: string) => Promise<StoredFile | null>;
}

/** Writes the form to print and saves it; one at a time, ended with the screen. */
export function useSizeFormFile({ words, readFile }: FormTools) {
  const [state, setState] = useState<SizeFormFile>({ kind: 'idle' });
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);
  const begin = async (name: string, body: SizeFormBody) => {
    const logo = body.seller.logo?.fileId;
    const file = logo === undefined ? null : await readFile(logo);
    const pictures = new Map(logo === undefined || file === null ? [] : [[logo, file.content]]);
    end.current();
    end.current = writePaper(
      { kind: 'paper', source: { kind: 'sizeForm', body }, words, pictures },
      (news) => {
        if (news.kind !== 'written') return setState(news);
        saveBlob(`${name}.pdf`, news.file);
        setState({ kind: 'saved', letters: foreignLettersWords(news.missing) });
      },
    );
  };
  const write = (name: string, body: SizeFormBody) => {
    setState({ kind: 'writing' });
    begin(name, body).catch((error: unknown) =>
      setState({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
    );
  };
  return { state, write };
}
