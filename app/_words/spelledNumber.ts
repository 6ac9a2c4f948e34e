const smallNumbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** @returns a small number as a word, a larger one in figures. */
export const spelledNumber = (count: number): string => smallNumbers[count] ?? String(count);

/** @returns a sentence with its first letter made large. */
export const withCapital = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
