import type { Block, Paper } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';
import { oneLine } from './heading';

/** What goes into the car on the morning of a stall day, to be ticked off. For the maker: prices and costs are not on it. */
export interface CarListBody {
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly locale: string;
  readonly currency: string;
  readonly workshop: string;
  readonly name: string;
  readonly place: string;
  readonly days: readonly string[];
  readonly ranges: readonly CarRange[];
  readonly takeAlong: readonly string[];
  /** Values in whole minor units, the largest first. */
  readonly float: readonly { readonly minor: number; readonly count: number }[];
}

interface CarRange {
  readonly name: string;
  /** In their order; one without a name for goods of one size. */
  readonly sizes: readonly string[];
  readonly designs: readonly {
    readonly name: string;
    /** As many as there are sizes. */
    readonly bring: readonly number[];
  }[];
}

export function carListPaper(body: CarListBody, labels: Labels): Paper {
  const figures = figuresOf({ ...body, length: 'mm' });
  const pieces = sumOf(body.ranges.flatMap(({ designs }) => designs.flatMap(({ bring }) => bring)));
  const blocks: readonly (Block | null)[] = [
    { kind: 'head', name: body.workshop, tagline: '', lines: [labels.carList], logo: null },
    {
      kind: 'title',
      title: body.name,
      subject: oneLine(body.place),
      party: null,
      facts: [
        { name: labels.piecesInAll, value: figures.count(pieces) },
        ...body.days.map((day) => ({ name: labels.date, value: figures.day(day) })),
      ],
    },
    ...body.ranges.map((range) => rangeStep(range, labels, figures.count)),
    body.float.length === 0 ? null : floatStep(body.float, labels, figures),
    body.takeAlong.length === 0 ? null : { ...step, heading: labels.takeAlong, ticks: body.takeAlong },
  ];
  return {
    page: body.page,
    language: body.language,
    title: `${labels.carList}: ${body.name}`,
    foot: labels.page,
    mayTighten: true,
    blocks: blocks.filter((block) => block !== null),
  };
}

// Helpers

const step = {
  kind: 'step',
  aside: '',
  lines: [],
  ticks: [],
  tally: { words: '', labels: [] },
  grid: null,
} as const;

const sumOf = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

function rangeStep(
  { name, sizes, designs }: CarRange,
  labels: Labels,
  count: (count: number) => string,
): Block {
  const all = sumOf(designs.flatMap(({ bring }) => bring));
  return {
    ...step,
    heading: filled(labels.broughtOf, { count: count(all), range: name }),
    grid: {
      heads: sizes.map((size) => (size === '' ? labels.oneSize : size)),
      last: sizes.length > 1 ? labels.inAll : '',
      rows: designs.map((design) => ({
        name: design.name,
        ticks: design.bring.map((bring) => (bring === 0 ? '' : count(bring))),
        last: sizes.length > 1 ? count(sumOf(design.bring)) : '',
      })),
    },
  };
}

function floatStep(
  float: CarListBody['float'],
  labels: Labels,
  { price, money, count }: ReturnType<typeof figuresOf>,
): Block {
  const total = sumOf(float.map((coin) => coin.minor * coin.count));
  return {
    ...step,
    heading: labels.tin,
    aside: money(total),
    ticks: float.map((coin) => `${count(coin.count)} × ${price(coin.minor)}`),
  };
}
