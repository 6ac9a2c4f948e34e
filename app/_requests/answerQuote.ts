import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { quoteObstacleWords } from '@/app/_words/orders/quote/quoteObstacleWords';
import { thoroughInput } from '@/lib/costing/layoutQuestions';
import { makeQuote } from '@/lib/quotes/makeQuote';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { quoteBody } from '@/lib/quotes/quoteBody';
import type { QuoteObstacle } from '@/lib/quotes/quoteObstacle';
import { orderNumberText } from '@/shared/orderNumberText';
import type { Quote } from '@/shared/schemas/orderPapers';
import { edgeGrid, edgeLayouts } from './edgeGrid';
import { plainContext } from './plainContext';

type QuoteAnswer =
  | { readonly kind: 'quoted'; readonly answer: TableOfQuote; readonly quote: Quote }
  | {
      readonly kind: 'refused';
      readonly number: string | null;
      readonly obstacles: readonly (QuoteObstacle & { readonly message: string })[];
    };

/** A line without a size stands for something beside the pieces. Whole minor units. */
interface TableLine {
  readonly what: string;
  readonly size: string | null;
  readonly quantity: number;
  readonly each: number;
  readonly total: number;
}

interface TableOfQuote {
  readonly number: string | null;
  readonly lines: readonly TableLine[];
  readonly subtotal: number;
  readonly discount: number;
  readonly tax: number;
  readonly total: number;
  readonly deposit: number;
  readonly balance: number;
  readonly validUntil: string;
  readonly dates: Pick<Quote['dates'], 'orderBlanksBy' | 'approveBy' | 'ready'>;
  readonly alternatives: readonly {
    readonly label: string;
    readonly sizes: readonly { readonly size: string; readonly quantity: number }[];
    readonly subtotal: number;
    readonly tax: number;
    readonly total: number;
  }[];
}

/**
 * What the command gives for an order: the quote it would go out as, or all that stands in the way, in words.
 *
 * @param day YYYY-MM-DD
 */
export function answerQuote(order: Omit<QuoteAsked, 'day' | 'load'>, day: string): QuoteAnswer {
  const grid = edgeGrid();
  const jobs = order.jobs.map(({ jobId, input }) => ({ jobId, input: thoroughInput(input, edgeLayouts) }));
  const made = makeQuote({ ...order, jobs, day, load: [] }, grid);
  const context = contextOf(order);
  const number = order.orderNumber === null ? null : orderNumberText(order.orderNumber);
  if (made.kind === 'refused') {
    const obstacles = made.obstacles.map((obstacle) => ({
      ...obstacle,
      message: quoteObstacleWords(obstacle, context),
    }));
    return { kind: 'refused', number, obstacles };
  }
  const letter = order.orderNumber?.letter ?? null;
  const quote = quoteBody(made.draft, { count: 1, letter }, (risk) => {
    const { sentence, detail } = findingWords(risk, context);
    return `${sentence} ${detail}`.trim();
  });
  return { kind: 'quoted', quote, answer: tableOf(quote, number) };
}

// Helpers

function contextOf({ jobs }: Pick<QuoteAsked, 'jobs'>): TextContext {
  const workshop = jobs[0]?.input.workshop;
  return workshop === undefined
    ? plainContext
    : { locale: workshop.locale, units: workshop.units, currency: workshop.currency };
}

function tableOf(quote: Quote, number: string | null): TableOfQuote {
  const { goods, charges, discount, sums, deposit, balance, validUntil, dates, alternatives } = quote;
  const { orderBlanksBy, approveBy, ready } = dates;
  return {
    number,
    lines: [
      ...goods.flatMap(({ name, sizes, start }) => [
        ...sizes.map(({ size, quantity, each, total }) => ({ what: name, size, quantity, each, total })),
        ...(start === 0 ? [] : [once(`${name}, set-up`, start)]),
      ]),
      ...charges.map(({ what, amount }) => once(what, amount)),
    ],
    subtotal: sums.subtotal,
    discount: discount?.amount ?? 0,
    tax: sums.tax,
    total: sums.total,
    ...{ deposit, balance, validUntil },
    dates: { orderBlanksBy, approveBy, ready },
    alternatives: alternatives.map(({ label, sizes, sums: other }) => ({
      label,
      sizes: sizes.map(({ size, quantity }) => ({ size, quantity })),
      ...other,
    })),
  };
}

const once = (what: string, amount: number): TableLine => ({
  what,
  size: null,
  quantity: 1,
  each: amount,
  total: amount,
});
