import type { SaveFailure } from '@/app/_backend/saveFailure';
import { listed } from '@/app/_words/listed';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';

interface ErasureTold {
  readonly name: string;
  /** Papers that went out to the customer, as in “quote 26-014A, version 2”. */
  readonly papers: readonly string[];
  /** Texts in its own orders and jobs in which a part of a name stands alone, as in “charge “Drive to Alex””. */
  readonly ownDrafts: readonly string[];
  /** The same in what was noted as happened, which nobody can change. */
  readonly ownEntries: readonly string[];
  /** Texts of others in which the name stands. */
  readonly elsewhere: readonly string[];
}

/** @returns what erasing a customer does, and what it cannot do, before it is done: a sentence or two each */
export function erasureWords(told: ErasureTold): readonly string[] {
  const { name, papers, ownDrafts, ownEntries, elsewhere } = told;
  return [
    `“${name}” goes for good: people, addresses, tax number, files; of its orders what was asked, agreed and noted, who answered, and the names on the pieces. Undo does not bring it back.`,
    'What else was typed in its orders and jobs, such as their names, charges and open items, loses the full names and contact.',
    'Sizes, quantities, prices and payments stay, without names.',
    ...(ownDrafts.length === 0
      ? []
      : [
          `Left for you to look at: ${listed(ownDrafts)}. Part of a name stands there; change it if it means them.`,
        ]),
    ...(ownEntries.length === 0
      ? []
      : [`Part of a name stays in what was noted, which cannot be changed: ${listed(ownEntries)}.`]),
    ...(papers.length === 0 ? [] : [papersWords(papers)]),
    ...(elsewhere.length === 0
      ? []
      : [`The name stands in ${listed(elsewhere)} too. It may mean something else there, so look yourself.`]),
    'Copies made before, other devices and files you carried still hold it. Delete those copies and files, and erase it on each device.',
  ];
}

/** @param why null where the customer is not here any more */
export const eraseFailedWords = (why: SaveFailure | null): string =>
  why === null
    ? 'They are not here any more, so nothing was erased. Look at the list of customers.'
    : `Nothing was erased. ${saveFailureWords[why]}`;

/** @returns what is left of a customer who was erased */
export function erasedWords(papers: readonly string[], orders: number): readonly string[] {
  return [
    orders === 0
      ? 'Everything personal is gone from this device.'
      : 'Everything personal is gone from this device. Sizes, quantities, prices and payments of their orders stay, without names.',
    ...(papers.length === 0 ? [] : [papersWords(papers)]),
    'Copies made before, other devices and files you carried may still hold it. Delete those copies and files, and erase it on each device.',
  ];
}

// Helpers

function papersWords(papers: ErasureTold['papers']): string {
  const named = listed(papers);
  const [stays, them] = papers.length === 1 ? ['stays as it', 'it'] : ['stay as they', 'them'];
  const first = `${named.slice(0, 1).toUpperCase()}${named.slice(1)}`;
  return `${first} ${stays} went out, with the name. The law of your place may ask you to keep ${them}; ask your local authority.`;
}
