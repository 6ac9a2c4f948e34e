/** The locale a tag stands for; a tag may have the right form and still mean nothing to the browser. */
export function usableLocale(tag: string): string {
  try {
    return new Intl.NumberFormat(tag).resolvedOptions().locale;
  } catch {
    return 'en';
  }
}
