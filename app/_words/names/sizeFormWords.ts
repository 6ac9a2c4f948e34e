import { drawnLettersWords, leftOutWords } from '@/app/_words/docket/coverWords';
import type { SizeFormWords } from '@/lib/names/sizeForm';

/**
 * What a size form says where the workshop has no words of its own for the customer's language. The sizes stand in the
 * head of their column, in brackets, which are passed over when the table is read back.
 *
 * @param sizes the blank's own; none where they are told elsewhere
 */
export const sizeFormWords = (hasNumbers: boolean, sizes: readonly string[] = []): SizeFormWords => ({
  name: 'Name',
  size: sizes.length === 0 ? 'Size' : `Size (${sizes.join(', ')})`,
  number: hasNumbers ? 'Number' : null,
  howTo: 'One line for each person, with one of the sizes below.',
});

type FormState =
  | { readonly kind: 'idle' | 'writing' }
  | { readonly kind: 'saved'; readonly letters: string }
  | { readonly kind: 'failed'; readonly why: string };

/** @returns how far the form to print is */
export function sizeFormStateWords(state: FormState): string {
  switch (state.kind) {
    case 'idle':
      return '';
    case 'writing':
      return 'The form is being written …';
    case 'saved':
      return `The form is saved. ${state.letters}`.trim();
    case 'failed':
      return `The form could not be written: ${state.why}. Save it as a table, or try again.`;
    default:
      return state satisfies never;
  }
}

/** @returns what became of letters in names that no type here has */
export function foreignLettersWords(
  missing: readonly {
    readonly letter: string;
    readonly codePoints: string;
    readonly fate: 'picture' | 'leftOut';
  }[],
): string {
  const drawn = missing.flatMap(({ letter, fate }) => (fate === 'picture' ? [letter] : []));
  const leftOut = missing.flatMap(({ codePoints, fate }) => (fate === 'leftOut' ? [codePoints] : []));
  return `${drawnLettersWords(drawn)} ${leftOutWords(leftOut)}`.trim();
}
