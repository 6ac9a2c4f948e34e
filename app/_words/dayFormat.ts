import { usableLocale } from './usableLocale';

const MOST_KEPT = 50;
const kept = new Map<string, Intl.DateTimeFormat>();

type DayParts = Pick<
  Intl.DateTimeFormatOptions,
  'weekday' | 'day' | 'month' | 'year' | 'dateStyle' | 'timeStyle'
>;

/**
 * Writes a day in the language of the sentences around it, in the order of the maker's place as far as English has it:
 * the month first where English is the maker's own and puts it there, else the day. Formatters are kept, because
 * making one takes long.
 *
 * @param locale what the maker chose for numbers
 */
export function dayFormat(locale: string, parts: DayParts = { dateStyle: 'medium' }): Intl.DateTimeFormat {
  const english = englishOf(usableLocale(locale));
  const key = JSON.stringify([english, parts]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat(english, { ...parts, timeZone: 'UTC' });
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, made);
  return made;
}

// Helpers

const englishOf = (locale: string): string => (/^en\b/i.test(locale) ? locale : 'en-GB');
