import type { LargePrice, Paper, PriceCard } from '@/lib/papers/paper';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { type Figures, figuresOf } from '@/lib/papers/words/figures';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import { sizeRow } from '@/lib/papers/words/sizeRow';

/** The prices of a stall as customers read them. No cost, no margin. */
export interface StallPricesBody {
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly locale: string;
  readonly currency: string;
  readonly seller: { readonly name: string; readonly tagline: string };
  readonly taxMode: 'added' | 'inside' | 'none';
  /** Of the last hour: minutes after midnight from when it holds; null for the whole day. */
  readonly fromMinute: number | null;
  readonly rows: readonly StallPrice[];
  readonly sets: readonly {
    readonly name: string;
    /** How many are bought together. */
    readonly pieces: number;
    /** Null for all sizes. */
    readonly sizes: readonly string[] | null;
    readonly minor: number;
    readonly rangeIds: readonly string[];
  }[];
  /** Whether sizes that are not there are offered to be ordered. */
  readonly offersOrders: boolean;
}

/** One price of a range. */
interface StallPrice {
  readonly rangeId: string;
  readonly range: string;
  readonly designs: readonly string[];
  /** Null for all of them. */
  readonly sizes: readonly string[] | null;
  readonly hasGap: boolean;
  readonly minor: number;
}

/** The list that lies on the table. */
export function tableListPaper(body: StallPricesBody, labels: Labels): Paper {
  const told = toldIn(body, labels);
  return {
    ...named(body, labels.tableList, told),
    blocks: [
      {
        kind: 'prices',
        name: body.seller.name,
        tagline: body.fromMinute === null ? body.seller.tagline : fromWords(body.fromMinute, told),
        rows: [
          ...body.rows.map((row, at) => largePrice(row, body.rows[at - 1], told)),
          ...body.sets.map((set) => ({
            what: sized(set.name, set.sizes, false, labels),
            under: setOf(set, body.rows, told, true),
            figure: told.figures.price(set.minor),
            isOffer: true,
          })),
        ],
        foot: [
          `${filled(labels[taxes[body.taxMode]], { currency: body.currency })} ${labels.cashOrCard}`,
          body.offersOrders ? labels.notYourSize : '',
        ],
      },
    ],
  };
}

/** A card for each design, to stand beside it. */
export function priceCardsPaper(body: StallPricesBody, labels: Labels): Paper {
  const told = toldIn(body, labels);
  return {
    ...named(body, labels.priceCards, told),
    blocks: [{ kind: 'priceCards', cards: cardsOf(body, told) }],
  };
}

// Helpers

interface Told {
  readonly labels: Labels;
  readonly figures: Figures;
}

const toldIn = (body: StallPricesBody, labels: Labels): Told => ({
  labels,
  figures: figuresOf({ ...body, length: 'mm' }),
});

const taxes: Readonly<Record<StallPricesBody['taxMode'], LabelKey>> = {
  added: 'pricesAdded',
  inside: 'pricesInside',
  none: 'pricesNone',
};

const fromWords = (minute: number, { labels, figures }: Told): string =>
  filled(labels.lastHour, { time: figures.time(minute) });

const named = (
  { page, language, seller, fromMinute }: StallPricesBody,
  name: string,
  told: Told,
): Omit<Paper, 'blocks'> => ({
  page,
  language,
  title: [seller.name, name, ...(fromMinute === null ? [] : [fromWords(fromMinute, told)])]
    .filter((part) => part !== '')
    .join(', '),
  foot: told.labels.page,
});

function sized(name: string, sizes: readonly string[] | null, hasGap: boolean, labels: Labels): string {
  if (sizes === null || sizes.length === 0) return name;
  return filled(labels.pricedSizes, { name: apart(name), sizes: sizeRow({ names: sizes, hasGap }, labels) });
}

function largePrice(row: StallPrice, before: StallPrice | undefined, { labels, figures }: Told): LargePrice {
  const { range, designs, sizes, hasGap, minor } = row;
  const isSame =
    before !== undefined &&
    designs.length > 1 &&
    before.rangeId === row.rangeId &&
    before.designs.length === designs.length &&
    designs.every((design) => before.designs.includes(design));
  return {
    what: sized(range, sizes, hasGap, labels),
    under: isSame ? filled(labels.sameDesigns, { count: figures.count(designs.length) }) : designs.join(', '),
    figure: figures.price(minor),
    isOffer: false,
  };
}

/**
 * Which goods a set is put together from.
 *
 * @param isNamed whether goods of one range are named; beside one of its designs nobody asks
 */
function setOf(
  { pieces, rangeIds }: StallPricesBody['sets'][number],
  rows: StallPricesBody['rows'],
  { labels, figures }: Told,
  isNamed: boolean,
): string {
  const own = rows.filter(({ rangeId }) => rangeIds.includes(rangeId));
  const ranges = [...new Map(own.map(({ rangeId, range }) => [rangeId, range])).values()];
  const count = figures.count(pieces);
  const [only, ...others] = ranges;
  if (only === undefined) return '';
  if (others.length > 0)
    return filled(labels.setOfGoods, { count, goods: ranges.map((name) => apart(name)).join(', ') });
  const isOneDesign = new Set(own.flatMap(({ designs }) => designs)).size === 1;
  const what = filled(isOneDesign ? labels.setOfOneDesign : labels.setOfDesigns, { count });
  return isNamed ? filled(labels.underOf, { goods: apart(only), what }) : what;
}

/** Of each design its first price large, further ones beneath. */
function cardsOf({ rows, sets, taxMode, fromMinute }: StallPricesBody, told: Told): readonly PriceCard[] {
  const { labels, figures } = told;
  // A card that was cut out says itself from when it holds.
  const foot = [
    fromMinute === null ? '' : fromWords(fromMinute, told),
    taxMode === 'added' ? labels.plusTax : '',
  ];
  const priced = (of: string, minor: number) =>
    filled(labels.pricedLine, { of, price: figures.price(minor) });
  const ranges = [...new Set(rows.map(({ rangeId }) => rangeId))];
  return ranges.flatMap((rangeId) => {
    const ofRange = rows.filter((row) => row.rangeId === rangeId);
    const designs = [...new Set(ofRange.flatMap((row) => row.designs))];
    return designs.flatMap((name): readonly PriceCard[] => {
      const [first, ...others] = ofRange.filter((row) => row.designs.includes(name));
      if (first === undefined) return [];
      return [
        {
          name,
          figure: figures.price(first.minor),
          lines: [
            ...others.map(({ sizes, hasGap, range, minor }) =>
              priced(sizes === null ? range : sizeRow({ names: sizes, hasGap }, labels), minor),
            ),
            ...sets
              .filter((set) => set.rangeIds.includes(rangeId))
              .map((set) =>
                priced(
                  filled(labels.underOf, {
                    goods: sized(set.name, set.sizes, false, labels),
                    what: setOf(set, rows, told, false),
                  }),
                  set.minor,
                ),
              ),
          ],
          foot: foot.filter((part) => part !== '').join(', '),
        },
      ];
    });
  });
}
