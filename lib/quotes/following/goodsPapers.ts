import type { ResolvedLine } from '@/lib/job/checkedJob';
import { resolveJob } from '@/lib/job/resolveJob';
import { namesOfList } from '@/lib/names/nameListText';
import { packingOrder } from '@/lib/names/packingOrder';
import type { CareCards } from '@/lib/papers/bodies/careCard';
import { addressOfGoods } from '@/lib/quotes/addressOfGoods';
import { goodsOf } from '@/lib/quotes/goodsOf';
import { labelsOfOrder, paperHeading, paperStyle } from '@/lib/quotes/paperHeading';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { failed, ok, type Result } from '@/shared/result';
import type { Blank } from '@/shared/schemas/blank';
import type { Customer } from '@/shared/schemas/customer';
import type { DeliveryNote, Proof } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import type { Issued } from './followingPapers';

/** What papers about the goods themselves are made of. */
export type GoodsAsked = Pick<QuoteAsked, 'orderId' | 'order' | 'orderNumber' | 'customer' | 'jobs'> & {
  readonly workshop: Workshop;
};

/** Why there is no paper about the goods. */
export type GoodsProblem =
  | { readonly kind: 'noCustomer' }
  | { readonly kind: 'nothingOrdered' }
  /** What the job names is not here, or it has more lines than a paper holds. */
  | { readonly kind: 'jobUnclear'; readonly jobId: string; readonly name: string }
  | { readonly kind: 'tooMany'; readonly what: 'lines' | 'names'; readonly most: number };

interface ProofFacts {
  /** Rounds of changes so far. */
  readonly revisionsUsed: number;
  readonly answerBy: string | null;
}

/** @returns the sheet that shows what will be printed, with the pictures as they are now. */
export function proofOf(
  asked: GoodsAsked,
  { revisionsUsed, answerBy }: ProofFacts,
  { number, day }: Issued,
): Result<Proof, GoodsProblem> {
  const found = linesOf(asked);
  if (!found.ok) return found;
  const { order, workshop } = asked;
  const labels = labelsOfOrder(asked);
  const heading = paperHeading({ ...asked, customer: found.value.customer, day });
  const names = found.value.lines.flatMap(({ line }) =>
    namesOfList(line.line.nameList).flatMap((name) => name.match(ON_A_LINE) ?? []),
  );
  if (names.length > MOST_NAMES) return failed({ kind: 'tooMany', what: 'names', most: MOST_NAMES });
  return ok({
    ...heading,
    number,
    goods: found.value.lines.map(({ jobId, line }) => ({
      ...goodsOf(jobId, line, { without: [], labels, locale: heading.locale }),
      sizes: sizesOf(line),
    })),
    names,
    revisionsIncluded: order.revisionsIncluded ?? workshop.quoting.revisionsIncluded,
    revisionsUsed,
    answerBy,
  });
}

/** @returns what goes out by size, and for whom where the order has names; to where goods go, not bills. */
export function deliveryNoteOf(
  asked: GoodsAsked,
  { number, day }: Issued,
): Result<DeliveryNote, GoodsProblem> {
  const found = linesOf(asked);
  if (!found.ok) return found;
  const { order } = asked;
  const labels = labelsOfOrder(asked);
  const { customer, lines } = found.value;
  const heading = paperHeading({ ...asked, customer, day });
  const people = lines.flatMap(({ jobId, line }) => {
    const rows = order.lines.find((one) => one.jobId === jobId && one.lineId === line.line.id)?.names ?? [];
    const sizes = line.blank.sizes.map(({ name }) => name);
    return packingOrder(rows, { by: 'size', sizes, locale: heading.locale }).map(
      ({ name, number: ownNumber, size }) => ({ name, number: ownNumber, size, goods: line.line.name }),
    );
  });
  if (people.length > MOST_NAMES) return failed({ kind: 'tooMany', what: 'names', most: MOST_NAMES });
  return ok({
    ...heading,
    number,
    customer: { ...heading.customer, address: addressOfGoods(order, customer) ?? '' },
    way: order.delivery.way,
    goods: lines.map(({ jobId, line }) => {
      const { name, says } = goodsOf(jobId, line, { without: [], labels, locale: heading.locale });
      return { name, says, sizes: sizesOf(line) };
    }),
    people,
  });
}

/** A sheet of cards for each piece; more are printed from the same file again. */
export const MOST_CARDS = 200;

/** @returns a card to go with each piece, without a name on it; null where nothing is known to be made. */
export function careCardsOf({ order, customer, jobs, workshop }: GoodsAsked): CareCards | null {
  const cards = jobs.flatMap(({ input }) => {
    const { resolved } = resolveJob(input);
    return (resolved?.lines ?? []).flatMap(({ blank, sizes }) =>
      Array.from({ length: Math.min(MOST_CARDS, piecesOf(sizes)) }, () => cares[blank.kind]),
    );
  });
  const { language, page, seller } = paperStyle({ order, customer, workshop });
  return cards.length === 0 ? null : { language, page, seller, cards: cards.slice(0, MOST_CARDS) };
}

// Helpers

/** What a paper holds. */
const MOST_LINES = 48;
const MOST_NAMES = 2000;
/** A line of names on a proof is no longer; the rest stands on the next. */
const ON_A_LINE = /.{1,200}/gsu;

const cares: Readonly<Record<Blank['kind'], CareCards['cards'][number]>> = {
  garment: 'shirt',
  bag: 'bag',
  cushion: 'other',
  drinkware: 'mug',
  panel: 'panel',
  mat: 'other',
  tile: 'panel',
  small: 'other',
};

interface FoundLines {
  readonly customer: Customer;
  readonly lines: readonly { readonly jobId: string; readonly line: ResolvedLine }[];
}

function linesOf({ customer, jobs }: GoodsAsked): Result<FoundLines, GoodsProblem> {
  if (customer === null || customer.name.trim() === '' || customer.erasedOn !== null)
    return failed({ kind: 'noCustomer' });
  const lines: { jobId: string; line: ResolvedLine }[] = [];
  for (const { jobId, input } of jobs) {
    const { resolved } = resolveJob(input);
    if (resolved === null) return failed({ kind: 'jobUnclear', jobId, name: input.job.name });
    for (const line of resolved.lines) if (line.sizes.length > 0) lines.push({ jobId, line });
  }
  if (lines.length === 0) return failed({ kind: 'nothingOrdered' });
  return lines.length > MOST_LINES
    ? failed({ kind: 'tooMany', what: 'lines', most: MOST_LINES })
    : ok({ customer, lines });
}

const sizesOf = ({ sizes }: ResolvedLine) => sizes.map(({ size, quantity }) => ({ size, quantity }));

const piecesOf = (sizes: ResolvedLine['sizes']): number =>
  sizes.reduce((sum, { quantity }) => sum + quantity, 0);
