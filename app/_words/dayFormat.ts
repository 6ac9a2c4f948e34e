const MOST_KEPT = 50;
const kept = new Map<string, Intl.DateTimeFormat>();

/** Writes a day the way a locale does; formatters are kept, because making one takes long. */
export function dayFormat(locale: string): Intl.DateTimeFormat {
  const known = kept.get(locale);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(locale, made);
  return made;
}
