import { missingLetters } from '@/lib/lettering/missingLetters';
import type { PaperSettings } from '@/shared/schemas/seller';
import { type PaperSource, paperOf } from './paperOf';
import { paperTexts } from './paperTexts';
import { labelsFor } from './words/labelsFor';

/** @returns the letters of a paper that no face of the type has, to be named before it goes out. */
export const lettersMissing = (
  source: PaperSource,
  words: PaperSettings['words'],
): ReturnType<typeof missingLetters> =>
  missingLetters(paperTexts(paperOf(source, labelsFor(source.body.language, words))).map(({ text }) => text));
