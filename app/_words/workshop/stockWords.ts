import type { Formatter } from '@/app/_words/formatter';
import { expectedOf, type Pile } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import type { ItemStock } from '@/lib/stock/stockOf';
import { formatMinor, type MinorUnits } from '@/shared/money';
import type { StockCause, StockGrade, StockItem, StockMove, StockPlace } from '@/shared/schemas/stock';

function placeWords(place: StockPlace): string {
  switch (place.kind) {
    case 'home':
      return 'at home';
    case 'van':
      return 'in the van';
    case 'shop':
      return `at ${place.name}`;
    default:
      return place satisfies never;
  }
}

/** What happened, as a maker says it of pieces. */
const causeWords: Readonly<Record<StockCause, string>> = {
  bought: 'Bought',
  made: 'Made',
  used: 'Used',
  scrapped: 'Spoiled',
  sold: 'Sold',
  given: 'Given away',
  returned: 'Came back',
  lost: 'Lost',
};

/** What can be noted of the blanks of a size. */
export const actWords = {
  ...causeWords,
  counted: 'Counted',
  moved: 'Moved',
  second: 'Became second grade',
} as const;

/** The stock of one blank where it is described. */
export const sectionWords = {
  strayed: (sizes: readonly string[]) =>
    `${sizes.join(', ')}: noted, but no size of this blank any more. Note there what became of them.`,
  toStockroom: 'All stock',
} as const;

/** What the form asks of a thing. */
export const noteWords = {
  howMany: 'How many',
  howMuch: 'How much',
  oneCost: 'One cost',
  allCost: 'All of it cost',
  rest: (kind: StockItem['kind']) =>
    kind === 'blank' ? 'Place, grade, lot' : kind === 'finished' ? 'Place, grade' : 'Place',
  andPrice: (isPieces: boolean) => (isPieces ? 'and what one cost' : 'and what it cost'),
  restAsUsual: (kind: StockItem['kind']) =>
    kind === 'blank' ? 'home, first grade, no lot named' : kind === 'finished' ? 'home, first grade' : 'home',
} as const;

export const gradeWords: Readonly<Record<StockGrade, string>> = { first: 'First', second: 'Second' };

interface Typed {
  readonly act: keyof typeof actWords;
  readonly quantity: number | null;
  readonly lot: string | null;
  /** What lies there; null where nothing is known of it. */
  readonly pile: Pile | null;
}

/** What a figure means beside what is noted, told before it is noted itself. */
export function countHint(
  { act, quantity, lot, pile }: Typed,
  formatter: Formatter,
): { readonly hint: string | undefined; readonly caution: string | undefined } {
  const noted = pile === null ? null : expectedOf(pile, lot);
  if (noted === null)
    return { hint: act === 'counted' ? 'Not counted there yet.' : undefined, caution: undefined };
  // Beside the place it goes to, “there” would be that one.
  const where =
    act !== 'moved' || pile === null
      ? 'there'
      : `${pile.grade === 'second' ? 'in second grade ' : ''}${placeWords(pile.place)}`;
  const there =
    noted < 0
      ? `${formatter.number(-noted)} more went out ${where} than came in`
      : `${formatter.number(noted)} noted ${where}`;
  const hint = `${there}.`;
  if (quantity === null) return { hint, caution: undefined };
  if (act === 'counted') {
    const words = `${there}: ${differenceWords(quantity - noted, formatter)}.`;
    return quantity === noted ? { hint: words, caution: undefined } : { hint: undefined, caution: words };
  }
  const isMuch = noted >= 0 && !['bought', 'made', 'returned'].includes(act) && quantity > noted;
  return {
    hint,
    caution: isMuch
      ? `Only ${formatter.number(noted)} noted ${where}: it goes below zero until somebody counts.`
      : undefined,
  };
}

/**
 * Where a thing lies, in one line; empty where none lies and only a count is wanted.
 *
 * @param unit what it is counted in; empty for pieces
 */
export function stockLine({ ready, others }: ItemStock, formatter: Formatter, unit = ''): string {
  const pile = ({ quantity, grade, place }: Pick<Pile, 'quantity' | 'grade' | 'place'>) =>
    `${withUnit(formatter.number(quantity), unit)}${grade === 'second' ? ' of second grade' : ''} ${placeWords(place)}`;
  const lying = [...(ready === null ? [] : [ready]), ...others].filter(({ quantity }) => quantity >= 0);
  return [...(ready === null ? ['not counted'] : []), ...lying.map(pile)].join(' · ');
}

/** What of a blank lies elsewhere in first grade, by place: “20 in the van”. */
export function elsewhereWords(
  piles: readonly Pile[],
  { blankId, sizes }: { readonly blankId: string; readonly sizes: readonly string[] },
  formatter: Formatter,
): readonly string[] {
  const lying = new Map<string, number>();
  for (const { item, place, grade, quantity } of piles) {
    const isOurs = item.kind === 'blank' && item.blankId === blankId && sizes.includes(item.size);
    // Below zero it is not known what lies there.
    if (!isOurs || place.kind === 'home' || grade !== 'first' || quantity <= 0) continue;
    const words = placeWords(place);
    lying.set(words, (lying.get(words) ?? 0) + quantity);
  }
  return [...lying].map(([words, count]) => `${formatter.number(count)} ${words}`);
}

/** What has to be known of a size beside its figures: below zero, what the last count found, its lots. */
export function stockNotes(
  { ready, others }: ItemStock,
  formatter: Formatter,
  dayOf: (at: number) => string,
): { readonly wrong: readonly string[]; readonly more: readonly string[] } {
  const piles = ready === null ? others : [ready, ...others];
  const wrong = piles
    .filter(({ quantity }) => quantity < 0)
    .map(
      ({ place, quantity }) =>
        `Count it: ${formatter.number(-quantity)} more went out ${placeWords(place)} than came in.`,
    );
  const found = ready?.counted;
  const more =
    found == null || found.difference === 0
      ? []
      : [`Counted ${formatter.day(dayOf(found.at))}: ${differenceWords(found.difference, formatter)}.`];
  const lots = ready?.lots ?? [];
  const named = lots.some(({ lot }) => lot !== null);
  return { wrong, more: named ? [...more, `${lots.map(lotWords).join(', ')}.`] : more };

  function lotWords({ lot, quantity }: Pile['lots'][number]): string {
    return `${lot === null ? 'no lot named' : `lot ${lot}`} ${formatter.number(quantity)}`;
  }
}

/** @param difference what was counted less what was noted */
function differenceWords(difference: number, formatter: Formatter): string {
  if (difference === 0) return 'as many as noted';
  return difference < 0
    ? `${formatter.number(-difference)} fewer than noted, a loss nobody saw`
    : `${formatter.number(difference)} more than noted`;
}

/** An entry, written or about to be. */
type SaidEntry = Said<StockEntry>;
type Said<Of> = Of extends StockEntry ? Pick<Of, 'kind' | 'body'> : never;

/**
 * What one entry says, with the size it speaks of.
 *
 * @param unit what the thing is counted in; empty for pieces
 */
export function entryWords(
  entry: SaidEntry,
  formatter: Formatter,
  locale: string,
  unit = '',
): { readonly size: string; readonly words: string } {
  if (entry.kind === 'stockTransfer') {
    const { from, to, quantity } = entry.body;
    const name = sizeOf(from.item);
    const many = withUnit(formatter.number(quantity), unit);
    if (sizeOf(to.item) !== name) return { size: sizeOf(to.item), words: `${many} were called ${name}` };
    const way =
      from.grade === to.grade
        ? `from ${nounOf(from.place)} to ${nounOf(to.place)}`
        : `to ${to.grade} grade, ${placeWords(to.place)}`;
    return { size: name, words: `Moved ${many} ${way}` };
  }
  const { item, place, grade, quantity } = entry.body;
  const lot = item.kind === 'blank' && item.lot !== null ? `lot ${item.lot}` : null;
  const about = [
    place.kind === 'home' ? null : placeWords(place),
    grade === 'second' ? 'second grade' : null,
    lot,
    costWords(entry.body.unitCost ?? null, formatter, locale),
  ].filter((word) => word !== null);
  const verb = entry.kind === 'stockCount' ? 'Counted' : causeWords[entry.body.cause];
  return {
    size: sizeOf(item),
    words: [`${verb} ${withUnit(formatter.number(Math.abs(quantity)), unit)}`, ...about].join(', '),
  };
}

// Helpers

const sizeOf = (item: StockMove['item']): string =>
  item.kind === 'blank' || item.kind === 'finished' ? item.size : '';

const nounOf = (place: StockPlace): string =>
  place.kind === 'home' ? 'home' : place.kind === 'van' ? 'the van' : place.name;

const withUnit = (many: string, unit: string): string => (unit === '' ? many : `${many} ${unit}`);

function costWords(cost: StockMove['unitCost'], formatter: Formatter, locale: string): string | null {
  if (cost === null) return null;
  const money = `${formatMinor(cost.minor as MinorUnits, cost.currency, locale)} ${cost.currency}`;
  return cost.per === undefined ? `${money} each` : `${money} for ${formatter.number(cost.per)}`;
}
