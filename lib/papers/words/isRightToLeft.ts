/** Languages written from the right, ISO 639. */
const FROM_RIGHT = new Set(['ar', 'ckb', 'dv', 'fa', 'he', 'iw', 'ji', 'ps', 'sd', 'ug', 'ur', 'yi']);

/** @returns whether pages in a language are read from the right. */
export const isRightToLeft = (language: string): boolean =>
  FROM_RIGHT.has((language.split('-')[0] ?? '').toLowerCase());
