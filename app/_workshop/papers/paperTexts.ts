/** A text of papers that the maker wrote in one language. */
interface OwnText {
  readonly language: string;
  readonly key: string;
  readonly text: string;
}

const isSame = (one: OwnText, language: string, key: string): boolean =>
  one.key === key && one.language.toLowerCase() === language.toLowerCase();

/** @returns what the maker wrote in just this language; undefined where nothing was written */
export const ownText = (texts: readonly OwnText[], language: string, key: string): string | undefined =>
  texts.find((one) => isSame(one, language, key))?.text;

/** @returns all texts with one put in place of what stood there; without it where it is null */
export function withText<Text extends OwnText>(
  texts: readonly Text[],
  { language, key }: Pick<Text, 'language' | 'key'>,
  text: Text | null,
): readonly Text[] {
  const at = texts.findIndex((one) => isSame(one, language, key));
  if (text === null) return texts.filter((_, index) => index !== at);
  return at < 0 ? [...texts, text] : texts.with(at, text);
}

/** @returns the texts of all other languages, by which papers would say what is not written in this one */
export const withoutLanguage = <Text extends OwnText>(
  texts: readonly Text[],
  language: string,
): readonly Text[] => texts.filter((one) => one.language.toLowerCase() !== language.toLowerCase());
