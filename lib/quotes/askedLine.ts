import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { daysBetween } from '@/shared/days';
import { toMinor } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { FrozenItem } from '@/shared/schemas/priceList';
import { listedLine } from './listedLine';
import type { OrderTax } from './orderTax';
import type { QuoteAsked, QuotedVersion } from './quoteAsked';
import type { QuoteObstacle } from './quoteObstacle';
import { type SoldLine, soldSize } from './soldLine';

/** What of an order decides the price of a line. */
export type LineTerms = Pick<QuoteAsked, 'order' | 'versions' | 'day'> & {
  readonly jobId: string;
  readonly currency: string;
  readonly tax: OrderTax;
  /** Of the paper it will stand on. */
  readonly labels: Labels;
};

/** @returns a line as the order asks for it, at the price of its job or of the list it names. */
export function askedLine(line: ResolvedLine, terms: LineTerms): Result<SoldLine, QuoteObstacle> {
  const { jobId, currency, tax } = terms;
  const of = { jobId, lineId: line.line.id, name: line.line.name };
  const item = listItem(line, terms);
  if (!item.ok) return item;
  if (item.value !== null) {
    const listed = listedLine(item.value, line.sizes, terms.labels, currency);
    if (listed.ok) return ok(onPaper({ ...of, ...listed.value, without: [] }, tax));
    const pieces = line.sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    return failed(
      listed.problem.kind === 'sizeNotListed'
        ? { ...listed.problem, ...of }
        : { ...listed.problem, ...of, pieces },
    );
  }
  const sizes = line.sizes.flatMap(({ size, quantity, askedPrice }) =>
    askedPrice === null || askedPrice <= 0 ? [] : [soldSize(size, quantity, toMinor(askedPrice, currency))],
  );
  if (sizes.length < line.sizes.length) return failed({ kind: 'noPrice', ...of });
  const start = toMinor(line.sizes[0]?.askedStart ?? 0, currency);
  return ok(onPaper({ ...of, sizes, start, charges: [], without: [] }, tax));
}

/** @returns the item of the version that a line takes its price from, null where the job asks it. */
export function listItem(
  { line }: ResolvedLine,
  { order, versions, day, jobId, currency, tax }: LineTerms,
): Result<FrozenItem | null, QuoteObstacle> {
  const price = order.lines.find((one) => one.jobId === jobId && one.lineId === line.id)?.price;
  if (price === undefined || price.from === 'job') return ok(null);
  const of = { jobId, lineId: line.id, name: line.name };
  const found = versions.find(({ paperId }) => paperId === price.paperId);
  const item = found?.version.items.find(({ id }) => id === price.itemId);
  if (found === undefined || item === undefined) return failed({ kind: 'listGone', ...of });
  const invalid = invalidity(found, day);
  if (invalid !== null) return failed({ ...invalid, ...of });
  const { version } = found;
  const isAlike = version.currency === currency && (version.taxMode === 'inside') === (tax.mode === 'inside');
  return isAlike ? ok(item) : failed({ kind: 'listOtherTerms', ...of });
}

/** @returns the line with its amounts as they stand on the paper. */
export function onPaper(line: SoldLine, { onPaper: written }: OrderTax): SoldLine {
  return {
    ...line,
    sizes: line.sizes.map(({ size, quantity, each }) => soldSize(size, quantity, written(each))),
    start: written(line.start),
    charges: line.charges.map(({ what, amount }) => ({ what, amount: written(amount) })),
  };
}

// Helpers

function invalidity({ version, isWithdrawn }: QuotedVersion, day: string) {
  if (isWithdrawn) return { kind: 'listWithdrawn' } as const;
  return daysBetween(day, version.validUntil) < 0
    ? ({ kind: 'listExpired', on: version.validUntil } as const)
    : null;
}
