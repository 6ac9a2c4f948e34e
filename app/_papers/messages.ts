import type { Cover } from '@/lib/exports/cover';
import type { missingLetters } from '@/lib/lettering/missingLetters';
import type { PaperSource } from '@/lib/papers/paperOf';
import type { PaperSettings } from '@/shared/schemas/seller';

/** What is to be written. */
export type PaperQuestion =
  | { readonly kind: 'cover'; readonly cover: Cover }
  | {
      readonly kind: 'paper';
      readonly source: PaperSource;
      /** The workshop's own words for labels. */
      readonly words: PaperSettings['words'];
      /** Files of the pictures on it by their SHA-256, as they are kept; what lacks leaves a named place. */
      readonly pictures: ReadonlyMap<string, Blob>;
    };

/** What the worker that sets papers answers; a fault is told, never swallowed. */
export type PaperReply =
  | {
      readonly kind: 'written';
      readonly file: Blob;
      readonly pages: number;
      /** Pictures that could not be shown. */
      readonly lost: readonly string[];
      /** Letters that the type has not. */
      readonly missing: ReturnType<typeof missingLetters>;
    }
  | { readonly kind: 'failed'; readonly why: string };
