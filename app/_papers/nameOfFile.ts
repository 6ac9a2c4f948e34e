import { fileName } from '@/app/_files/saveBlob';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { PaperSettings } from '@/shared/schemas/seller';

/** @returns the title of a paper as a file may be called. */
export function nameOfFile(source: PaperSource, words: PaperSettings['words']): string {
  const { title } = paperOf(source, labelsFor(source.body.language, words));
  const plain = fileName(title.replaceAll(/[\u2066-\u2069\p{Cc}]/gu, ''));
  return `${plain.slice(0, 150).trim() || 'Paper'}.pdf`;
}
