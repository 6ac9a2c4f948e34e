import { paperNumberText } from '@/app/_words/paperNumberText';
import type { PaperNumber } from '@/shared/schemas/happened';

interface ErasureTold {
  readonly name: string;
  /** Papers that went out to the customer; `word` is what one of their kind is called. */
  readonly papers: readonly { readonly word: string; readonly number: PaperNumber }[];
  /** Other things in which the name stands, as the maker calls them. */
  readonly stillNamed: readonly string[];
}

/** @returns what erasing a customer does, and what it cannot do, before it is done: a sentence or two each */
export function erasureWords({ name, papers, stillNamed }: ErasureTold): readonly string[] {
  return [
    `“${name}” goes for good: people, addresses, notes, files, and the names in its orders and jobs. Undo does not bring it back.`,
    'Sizes, quantities, prices and payments stay, without names.',
    ...(papers.length === 0 ? [] : [papersWords(papers)]),
    ...(stillNamed.length === 0
      ? []
      : [
          `The name stands in ${listed(stillNamed.map((one) => `“${one}”`))} too. It may mean something else there, so look yourself.`,
        ]),
    'Copies made before, other devices and files you carried still hold it. Delete those copies and files, and erase it on each device.',
  ];
}

// Helpers

function papersWords(papers: ErasureTold['papers']): string {
  const named = listed(papers.map(({ word, number }) => `${word} ${paperNumberText(number)}`));
  const [stays, them] = papers.length === 1 ? ['stays as it', 'it'] : ['stay as they', 'them'];
  const first = `${named.slice(0, 1).toUpperCase()}${named.slice(1)}`;
  return `${first} ${stays} went out, with the name. The law of your place may ask you to keep ${them}; ask your local authority.`;
}

const SHOWN = 8;

function listed(texts: readonly string[]): string {
  const more = texts.length - SHOWN;
  const parts = more > 1 ? [...texts.slice(0, SHOWN), `${more} more`] : texts;
  return parts.join(', ').replace(/, ([^,]*)$/, ' and $1');
}
