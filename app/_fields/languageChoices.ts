const tags =
  'en de fr nl es pt it sv nb da fi is ga cy et lv lt pl cs sk hu sl hr sr ro bg el tr uk he ar hi id ms vi th zh-CN ' +
  'zh-TW ja ko';

/** @returns what a language is called; the tag itself where the browser knows no name. */
export function languageName(tag: string): string {
  try {
    return new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag;
  } catch {
    // A tag of the right form that stands for nothing.
    return tag;
  }
}

/** Languages of papers by name, in the order of their names; those in use are among them, whatever they are. */
export const languageChoices = (
  inUse: readonly string[],
): readonly Readonly<{ value: string; label: string }>[] =>
  [...new Set([...tags.split(' '), ...inUse])]
    .map((value) => ({ value, label: languageName(value) }))
    .sort((one, other) => one.label.localeCompare(other.label, 'en'));
