import type { ResolvedJob } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits, toPriceEnding, toPriceUnder } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { type LineList, type ListedSize, sellingOf } from './list/lineList';
import type { LineNeeds } from './list/lineNeeds';
import { sellingTotal } from './list/selling';

/** What is asked for the pieces of a line where nobody has decided it; whole minor units as the channel writes prices. */
export interface SuggestedPrice {
  readonly lineId: string;
  /** A piece of the base size. */
  readonly each: MinorUnits;
  /** What the order pays once beside its pieces; 0 but where set-up is apart. */
  readonly start: MinorUnits;
  /** What a piece of each size adds. */
  readonly sizes: readonly ListedSize[];
}

/**
 * The one place where a price that nobody has decided comes from: what the list asks of an order of so many, as a price
 * a piece. Where larger orders hold the order down, that is the largest price on the ending with which it pays no more than by the list, yet never one that leaves less than the target; elsewhere it is the
 * price of its break, the maker's own where one is typed.
 *
 * @param pieces good pieces of the line, above 0
 */
export function suggestedPrice(
  { workshop }: Pick<ResolvedJob, 'workshop'>,
  { list, needs }: { readonly list: LineList; readonly needs: LineNeeds },
  pieces: number,
): SuggestedPrice {
  const { lineId, sizes } = list;
  const { currency, policy } = workshop;
  const reached = list.breaks.findLast(({ from }) => from <= pieces);
  const own = (reached ?? list.breaks[0])?.each ?? (0 as MinorUnits);
  const selling = sellingOf(list, NOTHING, currency);
  const pays = selling.ok ? sellingTotal(selling.value, pieces) : null;
  const isByPiece = list.rule === 'onePrice' || (reached !== undefined && pays === own * pieces);
  if (isByPiece) return { lineId, each: own, start: NOTHING, sizes };
  if (list.rule === 'setUpApart' && reached !== undefined)
    return { lineId, each: own, start: list.start, sizes };
  const least = toPriceEnding(needs.judged.written(pieces), policy.priceStep, currency);
  // Of an order below the first break the list says nothing: it pays the first price at the least.
  if (pays === null || reached === undefined)
    return { lineId, each: atLeast(own, least), start: NOTHING, sizes };
  const held = atLeast(toPriceUnder(pays / pieces, policy.priceStep, currency), least);
  // A cap only takes away: own prices under the target stay what they are.
  return { lineId, each: list.rule === 'capped' && held > own ? own : held, start: NOTHING, sizes };
}

/** @returns documents that ask what is suggested, where nobody has decided it. */
export function askedInput(input: JobInput, suggested: readonly SuggestedPrice[]): JobInput {
  const { currency } = input.workshop;
  const lines = input.job.lines.map((line) => {
    const found = suggestionFor(line, suggested);
    if (found === null) return line;
    const asked = askedLine(line, found, currency);
    // A typed start stands beside a price that nobody has decided yet.
    return { ...asked, askedStart: asked.askedStart ?? line.askedStart };
  });
  return { ...input, job: { ...input.job, lines } };
}

/** @returns null where the maker has decided the price of a line. */
export const suggestionFor = (
  { id, askedPrice }: Line,
  suggested: readonly SuggestedPrice[],
): SuggestedPrice | null =>
  askedPrice === null ? (suggested.find(({ lineId }) => lineId === id) ?? null) : null;

/** @returns a line as if the price were asked; up-charges of sizes that the list does not price stay as they are. */
export function askedLine(
  line: Line,
  { each, start, sizes }: Omit<SuggestedPrice, 'lineId'>,
  currency: string,
): Line {
  const priced = new Set(sizes.map(({ size }) => size));
  return {
    ...line,
    askedPrice: fromMinor(each, currency),
    askedStart: start > 0 ? fromMinor(start, currency) : null,
    upCharges: [
      ...line.upCharges.filter(({ size }) => !priced.has(size)),
      ...sizes.flatMap(({ size, more }) => (more === 0 ? [] : [{ size, amount: fromMinor(more, currency) }])),
    ],
  };
}

// Helpers

const NOTHING = 0 as MinorUnits;

const atLeast = (one: MinorUnits, other: MinorUnits): MinorUnits => (one > other ? one : other);
