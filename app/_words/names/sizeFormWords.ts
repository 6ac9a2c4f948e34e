import type { SizeFormWords } from '@/lib/names/sizeForm';

/** What a size form says where the workshop has no words of its own for the customer's language. */
export const sizeFormWords = (hasNumbers: boolean): SizeFormWords => ({
  name: 'Name',
  size: 'Size',
  number: hasNumbers ? 'Number' : null,
  howTo: 'One line for each person, with one of the sizes below.',
});
