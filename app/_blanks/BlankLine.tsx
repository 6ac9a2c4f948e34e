import { formatterFor } from '@/app/_words/formatter';
import { fibreWords } from '@/app/_words/workshop/blankWords';
import type { Blank } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { ColourDot } from './ColourDot';

type BlankLineProps = Readonly<{
  blank: Blank;
  workshop: Workshop;
  /** What lies at home by size; a size nobody counted is left out. */
  onHand: Readonly<Record<string, number>>;
  /** What lies in other places, in words. */
  elsewhere: readonly string[];
}>;

/** A blank in one line: its colour, its cloth or coating, its sizes, its lowest price, what is there. */
export function BlankLine({ blank, workshop, onHand, elsewhere }: BlankLineProps) {
  const counted = blank.sizes.flatMap(({ name }) => (Object.hasOwn(onHand, name) ? [onHand[name] ?? 0] : []));
  // More went out than came in: what lies there is not known.
  const lying = counted.filter((count) => count >= 0);
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
    ...(lying.length === 0
      ? []
      : [`${formatter.number(lying.reduce((sum, count) => sum + count, 0))} at home`]),
    ...elsewhere,
    ...(lying.length === counted.length
      ? []
      : [`${formatter.count(counted.length - lying.length, 'size')} to count`]),
  ];
  return (
    <>
      <ColourDot colour={blank.colour} /> {words.join(' · ')}
    </>
  );
}
