import type { TextContext } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { ownListTable, ownListWords } from '@/app/_words/priceLists/ownListWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { PriceListBody } from '@/lib/papers/bodies/priceListPaper';
import type { PaperSource } from '@/lib/papers/paperOf';
import type { Workshop } from '@/shared/schemas/workshop';

type Shown = Readonly<Pick<PriceListBody, 'version' | 'standing' | 'page'>>;

/** @returns what the customer gets of a version. */
export function listSource(shown: Shown, { locale, units }: Pick<Workshop, 'locale' | 'units'>): PaperSource {
  const marks = usableLocale(locale);
  return {
    kind: 'priceList',
    body: { ...shown, locale: marks, length: units.length, language: marks.split('-')[0] ?? 'en' },
  };
}

/** @returns what each price leaves, for the maker alone: a file of its own, so that who sends the list sends no margin. */
export const ownListSource = (
  { version, page }: Pick<Shown, 'version' | 'page'>,
  workshop: TextContext & Pick<Workshop, 'name' | 'seller'>,
): PaperSource => ({
  kind: 'ownSheet',
  body: {
    page,
    language: 'en',
    workshop: workshop.seller.name.trim() === '' ? workshop.name : workshop.seller.name,
    kind: ownListWords.heading,
    name: version.title,
    facts: [{ name: ownListWords.version, value: paperNumberText(version.number) }],
    says: ownListWords.says,
    tables: [ownListTable(version, workshop)],
    foot: '',
  },
});
