import { numberFormat } from '@/shared/numberFormat';

/** The locale a tag stands for; a tag may have the right form and still mean nothing to the browser. */
export function usableLocale(tag: string): string {
  try {
    return numberFormat(tag).resolvedOptions().locale;
  } catch {
    return 'en';
  }
}
