/** What the versions of one list are numbered in. */
export const versionSeries = (listId: string): string => `priceList ${listId}`;
