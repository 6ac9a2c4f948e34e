import { givenOptions } from './givenOptions';

type QuoteArguments =
  | {
      readonly kind: 'usable';
      readonly file: string;
      /** Which order of a copy; null where none is named. */
      readonly orderId: string | null;
      /** Where the paper is written to; null where none is wanted. */
      readonly pdf: string | null;
    }
  | { readonly kind: 'unusable'; readonly why: string };

const USAGE = 'npm run -s quote -- FILE.json [--order ID] [--pdf OUT.pdf]';
const OPTIONS = ['--order', '--pdf'];

/** @returns what the quote command was asked for, or what is wrong with it in one sentence. */
export function quoteArguments(words: readonly string[]): QuoteArguments {
  const read = givenOptions(words, OPTIONS, USAGE);
  if (read.kind === 'unusable') return read;
  const { file, given } = read;
  return { kind: 'usable', file, orderId: given.get('--order') ?? null, pdf: given.get('--pdf') ?? null };
}
