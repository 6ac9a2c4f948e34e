/** @returns a text cut where it is longer than its place takes. */
export const shortened = (text: string, mostLetters: number): string =>
  text.length <= mostLetters ? text : `${text.slice(0, mostLetters - 1).trimEnd()}…`;

/** @returns a text that a paper takes for a name; names on papers are no longer. */
export const asName = (text: string): string => shortened(text, 120);
