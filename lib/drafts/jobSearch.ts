import { ownEntry } from '@/lib/job/ownEntry';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';

interface SearchedDocuments {
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly artworks: Readonly<Record<string, Artwork>>;
}

/** @returns everything a job is found by: its name, its customer, its lines, their blanks and their artworks. */
export function searchText(job: Job, { blanks, artworks }: SearchedDocuments): string {
  const names = [
    job.name,
    job.customer,
    ...job.lines.flatMap(({ name, blankId, placements }) => [
      name,
      ownEntry(blanks, blankId)?.name ?? '',
      ...placements.map(({ artworkId }) => ownEntry(artworks, artworkId)?.name ?? ''),
    ]),
  ];
  return foldedText(names.join('\n'));
}

/**
 * @param text made by `searchText`
 * @returns whether every word that was asked for begins or stands somewhere in it, accents and case aside
 */
export const isFound = (text: string, asked: string): boolean =>
  foldedText(asked)
    .split(/\s+/)
    .every((word) => text.includes(word));

/** Letters that Unicode does not take apart into a plain one and its mark, as people type them without. */
const plainLetters: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
};

/** @returns a text as it is compared: without case, accents or spaces at its ends. */
export const foldedText = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    // A dotted capital leaves its dot behind when it becomes small.
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[ßæœøłđðþı]/gu, (letter) => plainLetters[letter] ?? letter)
    .trim();
