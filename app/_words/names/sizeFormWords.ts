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

/** @returns how far the form to print is */
export function sizeFormStateWords(kind: 'idle' | 'writing' | 'saved' | 'failed', why: string): string {
  switch (kind) {
    case 'idle':
      return '';
    case 'writing':
      return 'The form is being written …';
    case 'saved':
      return 'The form is saved.';
    case 'failed':
      return `The form could not be written: ${why}. Save it as a table, or try again.`;
    default:
      return kind satisfies never;
  }
}
