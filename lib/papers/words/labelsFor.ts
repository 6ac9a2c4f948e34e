import type { PaperSettings } from '@/shared/schemas/seller';
import { englishLabels, type LabelKey, type Labels } from './englishLabels';

/**
 * The words of papers in a language: the workshop's own where it wrote some in it, else ours. Words of the language in
 * another country come before ours.
 */
export function labelsFor(language: string, words: PaperSettings['words']): Labels {
  const own = new Map<string, string>();
  for (const { key, text } of ofLanguage(language, words)) {
    // What is no text of several lines has room for one only.
    own.set(key, key.endsWith('Text') ? text : text.replaceAll(/\s+/g, ' '));
  }
  const labelOf = (key: LabelKey): string => own.get(key) ?? englishLabels[key];
  const labels: Record<LabelKey, string> = { ...englishLabels };
  for (const key of labelKeys) labels[key] = labelOf(key);
  return labels;
}

export const labelKeys = Object.keys(englishLabels).filter((key): key is LabelKey => key in englishLabels);

/** @returns what is written in a language, the very tag last so that it counts. */
export function ofLanguage<Text extends { readonly language: string }>(
  language: string,
  texts: readonly Text[],
): readonly Text[] {
  const wanted = language.toLowerCase();
  const tags = (text: Text) => text.language.toLowerCase();
  return [
    ...texts.filter((text) => tags(text) !== wanted && mainOf(tags(text)) === mainOf(wanted)),
    ...texts.filter((text) => tags(text) === wanted),
  ];
}

const mainOf = (tag: string): string => tag.split('-')[0] ?? tag;

/** A label with what belongs in its braces; typed names keep their own direction. */
export const filled = (label: string, values: Readonly<Record<string, string | number>>): string =>
  label.replaceAll(/\{(\w+)\}/g, (whole, key: string) => {
    return Object.hasOwn(values, key) ? String(values[key]) : whole;
  });

/** A typed name inside a sentence: its letters order nothing around it. */
export const apart = (name: string): string => `\u2068${name}\u2069`;
