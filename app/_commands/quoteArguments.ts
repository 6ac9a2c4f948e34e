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
  const files: string[] = [];
  const given = new Map<string, string>();
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] ?? '';
    if (!word.startsWith('--')) {
      files.push(word);
      continue;
    }
    if (!OPTIONS.includes(word)) return unusable(`${word} is not known: ${USAGE}`);
    const value = words[index + 1];
    if (value === undefined) return unusable(`${word} needs a value: ${USAGE}`);
    if (given.has(word)) return unusable(`${word} is given twice: ${USAGE}`);
    given.set(word, value);
    index += 1;
  }
  const [file, ...rest] = files;
  if (file === undefined || rest.length > 0) return unusable(`Name one file: ${USAGE}`);
  return { kind: 'usable', file, orderId: given.get('--order') ?? null, pdf: given.get('--pdf') ?? null };
}

const unusable = (why: string): QuoteArguments => ({ kind: 'unusable', why });
