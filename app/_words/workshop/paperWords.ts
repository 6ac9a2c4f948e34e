import { listed } from '@/app/_words/listed';

/** A key of the table of labels as words: `validUntil` is “valid until”. */
const keyWords = (key: string): string =>
  key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim();

const LONGEST = 60;

/**
 * What a word of papers is called: our own word for it, with its place where two are alike.
 *
 * @param ours all our words by key
 */
export function labelName<Key extends string>(key: Key, ours: Readonly<Record<Key, string>>): string {
  const [line = ''] = ours[key].split('\n');
  const short = line.length > LONGEST ? `${line.slice(0, LONGEST).trimEnd()}…` : line;
  const isAlone = Object.values<string>(ours).filter((text) => text === ours[key]).length === 1;
  return isAlone ? short : `${short} (${keyWords(key)})`;
}

/** @returns what is wrong with braces in a word of one's own; undefined where nothing is */
export function bracesCaution(own: string, ours: string): string | undefined {
  const wanted = bracesIn(ours);
  const there = bracesIn(own);
  const missing = wanted.filter((one) => !there.includes(one));
  if (missing.length > 0) return `Without ${listed(missing)} it is not said on the paper.`;
  return unknownCaution(there.filter((one) => !wanted.includes(one)));
}

/** @returns the same of a term, which may leave out any figure */
export const termCaution = (own: string, figures: readonly string[]): string | undefined =>
  unknownCaution(bracesIn(own).filter((one) => !figures.includes(one.slice(1, -1))));

export const askAuthority = 'The law of your place decides part of this: ask your local authority.';

// Helpers

const bracesIn = (text: string): readonly string[] => [
  ...new Set([...text.matchAll(/\{\w+\}/g)].map(([braces]) => braces)),
];

const unknownCaution = (unknown: readonly string[]): string | undefined =>
  unknown.length === 0
    ? undefined
    : `${listed(unknown)} ${unknown.length === 1 ? 'stands for no figure and is printed as it is' : 'stand for no figures and are printed as they are'}.`;
