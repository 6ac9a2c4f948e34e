/** A maker has one locale and a few shapes of number; requests from outside could name any number of locales. */
const MOST_KEPT = 200;
const kept = new Map<string, Intl.NumberFormat>();

/** The sign of a minus, as wide as a figure; `parseNumber` reads it as it reads a hyphen. */
export const withMinus = (written: string): string => written.replace('-', '\u2212');

/**
 * The platform's formatter of a locale and shape. Making one takes longer than a hundred uses of it, so they are kept.
 *
 * @param locale BCP 47 tag
 * @throws RangeError where the tag has not the form of one
 */
export function numberFormat(locale: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = new Intl.NumberFormat(locale, options);
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, made);
  return made;
}
