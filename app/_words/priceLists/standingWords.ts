import type { WorkerFailure } from '@/app/_network/workerFailure';
import { breakPieceWords } from '@/app/_words/docket/breakWords';
import { findingWords } from '@/app/_words/findings/findingWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import { sentenceOf, whyMissing } from '@/app/_words/missingAnswerWords';
import type { ItemState, WornPrice } from '@/lib/priceLists/compareItem';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { FrozenItem } from '@/shared/schemas/priceList';
import { thresholds } from '@/shared/tables/thresholds';

/** How an issued item stands today; `asked` until the sums are made. */
export type ItemStanding =
  | ItemState
  | { readonly kind: 'gone' | 'asked' }
  | { readonly kind: 'failed'; readonly failure: WorkerFailure };

/** How an issued item stands, in words; rates are told apart from prices. */
interface StandingWords {
  readonly key: string;
  readonly severity: 'caution' | 'note';
  readonly sentence: string;
  readonly detail: string;
  /** One for each price that no longer holds. */
  readonly prices?: readonly string[];
}

/** @returns nothing for an item that holds, and while its sums are made. */
export function standingWords(
  item: FrozenItem,
  standing: ItemStanding,
  context: TextContext,
): readonly StandingWords[] {
  const formatter = formatterFor(context);
  const cannot = (sentence: string, detail: string): readonly StandingWords[] => [
    { key: item.id, severity: 'caution', sentence, detail },
  ];
  switch (standing.kind) {
    case 'asked':
      return [];
    case 'gone':
      return cannot(
        `The job of ${item.name} is no longer here.`,
        'What it was listed at stays readable, but cannot be held against today’s rates.',
      );
    case 'noLine':
      return cannot(
        `${item.name} is no longer a line of its job, or has no pieces.`,
        'It cannot be held against today’s rates.',
      );
    case 'otherTerms':
      return cannot(
        `${item.name} is sold in another currency now, or with tax written in another way.`,
        'The list and today’s prices cannot be compared. Issue a new version.',
      );
    case 'stopped':
      return cannot(
        `The job of ${item.name} is stopped.`,
        `${standing.why === null ? 'Its sums cannot be made.' : findingWords(standing.why, context).sentence} It cannot be held against today’s rates.`,
      );
    case 'failed':
      return cannot(`${item.name} could not be compared.`, sentenceOf(whyMissing(standing.failure)));
    case 'compared':
      return [
        ...wornWords(item, standing, formatter, context.currency),
        ...goneSizes(item, standing.goneSizes),
      ];
    default:
      return standing satisfies never;
  }
}

// Helpers

type Compared = Extract<ItemStanding, { readonly kind: 'compared' }>;

function wornWords(
  item: FrozenItem,
  { worn, moved }: Compared,
  formatter: Formatter,
  currency: string,
): readonly StandingWords[] {
  if (worn.length === 0) return [];
  return [
    {
      key: `${item.id} worn`,
      severity: 'caution',
      sentence: `${item.name}: ${formatter.count(worn.length, 'price')} no longer ${worn.length === 1 ? 'holds' : 'hold'}.`,
      detail: movedWords(moved, formatter),
      prices: worn.map((price) => priceWords(item, price, formatter, currency)),
    },
  ];
}

function priceWords(
  { selling }: FrozenItem,
  price: WornPrice,
  formatter: Formatter,
  currency: string,
): string {
  const { from, to, at, size, listed, today, marginNow, marginThen } = price;
  const money = (minor: number) => formatter.money(fromMinor(minor as MinorUnits, currency));
  const of = breakPieceWords({ from, to });
  const was = `${formatter.share(marginNow)} in size ${size}, was ${formatter.share(marginThen)}`;
  const isEach = selling === 'asListed';
  const told = isEach
    ? `${of}: ${money(listed / at)} now leaves ${was}`
    : `${of}: ${money(listed)} for ${at} now leaves ${was}`;
  if (today <= listed) return `${told}.`;
  return isEach
    ? `${told}; today’s price would be ${money(today / at)}.`
    : `${told}; today it would be ${money(today)}.`;
}

function movedWords(moved: Compared['moved'], formatter: Formatter): string {
  if (moved.length === 0) return 'No rate has moved; the job itself has changed.';
  const told = moved
    .slice(0, 3)
    .map(({ label, unit, was, is }) => `${label} ${formatter.rate(was, unit)} → ${formatter.rate(is, unit)}`);
  const more = moved.length > 3 ? ` and ${moved.length - 3} more` : '';
  return `Moved since: ${told.join('; ')}${more}.`;
}

function goneSizes(item: FrozenItem, gone: readonly string[]): readonly StandingWords[] {
  if (gone.length === 0) return [];
  return [
    {
      key: `${item.id} sizes`,
      severity: 'note',
      sentence: `${item.name}: the job no longer has ${gone.join(', ')}.`,
      detail: 'What was promised for it cannot be held against today’s rates.',
    },
  ];
}

/** @returns one sentence for the rates behind a version that nobody has looked at for long; null where there are none. */
export function agedWords(standings: readonly ItemStanding[], context: TextContext): StandingWords | null {
  const formatter = formatterFor(context);
  const days = new Map(
    standings.flatMap((standing) =>
      standing.kind === 'compared' ? standing.aged.map((rate) => [rate.label, rate.days] as const) : [],
    ),
  );
  const old = [...days].toSorted(([, a], [, b]) => b - a);
  const [oldest] = old;
  if (oldest === undefined) return null;
  const told = old.slice(0, 3).map(([label, since]) => `${label} (${formatter.count(since, 'day')})`);
  const more = old.length > 3 ? ` and ${formatter.count(old.length - 3, 'other rate')}` : '';
  return {
    key: 'aged',
    severity: 'note',
    sentence: `Rates nobody has looked at for more than ${thresholds.rateAge.note.value} days: ${told.join(', ')}${more}.`,
    detail: 'Prices may have worn without anybody seeing it. Look at them, and confirm what still holds.',
  };
}
