import { formatterFor } from '@/app/_words/formatter';
import { fibreWords } from '@/app/_words/workshop/blankWords';
import type { Blank } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { ColourDot } from './ColourDot';

/** A blank in one line: its colour, its cloth or coating, its sizes, its lowest price. */
export function BlankLine({ blank, workshop }: Readonly<{ blank: Blank; workshop: Workshop }>) {
  const formatter = formatterFor(workshop);
  const prices = blank.sizes.flatMap(({ price }) => (price === null ? [] : [price.value]));
  const words = [
    blank.colour.name,
    ...(blank.fibres.length === 0
      ? []
      : [
          blank.fibres
            .map(({ fibre, share }) => `${formatter.share(share)} ${fibreWords[fibre].toLowerCase()}`)
            .join(', '),
        ]),
    formatter.count(blank.sizes.length, 'size'),
    prices.length === 0 ? 'no price yet' : `from ${formatter.money(Math.min(...prices))}`,
  ];
  return (
    <>
      <ColourDot colour={blank.colour} /> {words.join(' · ')}
    </>
  );
}
