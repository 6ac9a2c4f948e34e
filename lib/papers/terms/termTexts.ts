import type { Labels } from '@/lib/papers/words/englishLabels';
import { filled, ofLanguage } from '@/lib/papers/words/labelsFor';
import type { Invoice } from '@/shared/schemas/orderPapers';
import type { TermToFill } from '@/shared/schemas/paperParts';
import { type PaperSettings, type TermKey, termKeys } from '@/shared/schemas/seller';
import { starterTerms, type TermFigure, termFigures } from './starterTerms';

/** What a paper knows, as it writes it; what it does not know is left out, and with it what names it. */
export type TermFacts = Partial<Record<TermFigure, string | null>>;

/**
 * The terms before anything is put into them: the workshop's own words where it wrote some, else ours.
 *
 * @param ownGarments whether the customer brings the pieces
 */
export function termTexts(
  { terms, ownTerms }: Pick<PaperSettings, 'terms' | 'ownTerms'>,
  labels: Labels,
  language: string,
  ownGarments: boolean,
): readonly TermToFill[] {
  const own = new Map<TermKey, string>();
  for (const { key, text } of ofLanguage(language, terms)) own.set(key, text);
  const texts = termKeys
    .filter((key) => key !== 'ownGarments' || ownGarments)
    .map((key) => ({
      key,
      heading: labels[starterTerms[key].heading],
      text: own.get(key) ?? starterTerms[key].text,
    }));
  return [
    ...texts,
    ...ownTermsIn(language, ownTerms).map(({ heading, text }) => ({ key: null, heading, text })),
  ];
}

/** @returns the terms of the workshop alone that stand on papers in a language: those written in it, and those of no one. */
export function ownTermsIn(language: string, ownTerms: PaperSettings['ownTerms']): PaperSettings['ownTerms'] {
  const written = ofLanguage(
    language,
    ownTerms.flatMap((term) => (term.language === null ? [] : [{ id: term.id, language: term.language }])),
  );
  return ownTerms.filter((term) => term.language === null || written.some(({ id }) => id === term.id));
}

/** @returns terms with figures; a sentence with one that is not known is left out, and a term of which nothing is left. */
export function filledTerms(texts: readonly TermToFill[], facts: TermFacts): Invoice['terms'] {
  const known: Record<string, string> = {};
  for (const figure of termFigures) {
    const value = facts[figure];
    if (value != null) known[figure] = value;
  }
  return texts
    .map(({ heading, text }) => ({ heading, text: told(text, known) }))
    .filter(({ text }) => text !== '');
}

/** @returns the sentences of a text whose figures are all known, with them. */
function told(text: string, known: Readonly<Record<string, string>>): string {
  return text
    .split('\n')
    .map((line) =>
      sentencesOf(line)
        .filter((sentence) => figuresIn(sentence).every((figure) => known[figure] !== undefined))
        .map((sentence) => filled(sentence, known))
        .join('')
        .trim(),
    )
    .filter((line) => line !== '')
    .join('\n');
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });

const sentencesOf = (line: string): readonly string[] =>
  [...sentences.segment(line)].map(({ segment }) => segment);

/** Braces around anything else are the workshop's own. */
const figuresIn = (sentence: string): readonly string[] =>
  [...sentence.matchAll(/\{(\w+)\}/g)]
    .map(([, name = '']) => name)
    .filter((name) => termFigures.some((figure) => figure === name));
