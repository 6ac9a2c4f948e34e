/** @returns how many pages a list takes, and what to do where they are too many. */
export const listPagesWords = (pages: number): string =>
  pages > 1
    ? `It takes ${pages} pages. A list is read best on one: take items off, or make two lists.`
    : 'It fits on one page.';

/** What stands around the files of a list. */
export const listFileWords = {
  spoken: 'of the price list',
  saving: 'Save as PDF',
  beingMade: 'The file is being made.',
  toPrint: 'To print it, open the saved file and print it from there.',
  nothing: 'There is no paper to save yet.',
  ownSpoken: 'of your own sheet',
} as const;
