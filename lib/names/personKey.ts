/**
 * @returns what two ways of writing a person's name have in common: composed signs (Unicode Annex 15), Unicode's own
 * lower case in no language, single spaces
 */
export const personKey = (name: string): string =>
  name.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();
