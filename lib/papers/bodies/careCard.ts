import type { Paper } from '@/lib/papers/paper';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import type { Seller } from '@/shared/schemas/paperParts';
import { textLines } from './heading';

/** How what was printed is washed and kept; it has no number and is never issued. */
export interface CareCards {
  readonly language: string;
  readonly page: 'a4' | 'letter';
  readonly seller: Pick<Seller, 'name' | 'contact'>;
  /** A card for each, as often as it stands here. */
  readonly cards: readonly CareKind[];
}

type CareKind = 'shirt' | 'mug' | 'panel' | 'bag' | 'other';

const words: Readonly<Record<CareKind, { readonly heading: LabelKey; readonly text: LabelKey }>> = {
  shirt: { heading: 'careShirt', text: 'careShirtText' },
  mug: { heading: 'careMug', text: 'careMugText' },
  panel: { heading: 'carePanel', text: 'carePanelText' },
  bag: { heading: 'careBag', text: 'careBagText' },
  other: { heading: 'careOther', text: 'careOtherText' },
};

export const careCardPaper = ({ language, page, seller, cards }: CareCards, labels: Labels): Paper => ({
  page,
  language,
  title: labels.careCard,
  foot: labels.page,
  blocks: [
    {
      kind: 'cards',
      cards: cards.map((kind) => ({
        heading: labels[words[kind].heading],
        lines: textLines(labels[words[kind].text]),
        foot: [seller.name, ...textLines(seller.contact)].join(' · '),
      })),
    },
  ],
});
