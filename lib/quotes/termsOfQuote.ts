import { textLines } from '@/lib/papers/bodies/heading';
import type { TermFigure } from '@/lib/papers/terms/starterTerms';
import { filledTerms, type TermFacts, termTexts } from '@/lib/papers/terms/termTexts';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import { daysBetween } from '@/shared/days';
import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';
import type { Invoice, Quote } from '@/shared/schemas/orderPapers';
import type { TermKey } from '@/shared/schemas/seller';
import type { Workshop } from '@/shared/schemas/workshop';
import { addressOfGoods } from './addressOfGoods';
import { shortened } from './asName';
import type { PricedJob } from './pricedJob';

interface OfTerms {
  readonly heading: Pick<Quote, 'language' | 'locale' | 'length' | 'currency'>;
  readonly workshop: Pick<Workshop, 'papers' | 'quoting'>;
  readonly order: Pick<Order, 'agreed' | 'delivery'>;
  readonly customer: Customer;
  readonly jobs: readonly PricedJob[];
  readonly labels: Labels;
  readonly sums: Quote['sums'];
  readonly deposit: number;
  readonly balance: number;
  readonly dates: Quote['dates'];
  readonly revisionsIncluded: number;
}

/**
 * The terms of a quote in the words of the workshop with its figures beside, and what was agreed besides. A balance that
 * is paid after the invoice is none before the goods go out, and a figure of nothing is none.
 */
export function termsOfQuote({
  heading,
  workshop: { papers, quoting },
  order,
  customer,
  jobs,
  labels,
  sums,
  deposit,
  balance,
  dates,
  revisionsIncluded,
}: OfTerms): QuotedTerms {
  const figures = figuresOf(heading);
  const money = moneyIn(heading);
  const day = (on: string | null) => (on === null ? null : figures.day(on));
  const count = (many: number | null) => (many === null ? null : figures.count(many));
  const { creditDays, remakeDays, claimDays } = quoting;
  const isOnCredit = creditDays !== null && creditDays > 0;
  const spares = sparesToBring(jobs);
  const ownGarments = jobs.some(({ costed }) =>
    costed.laidOut.job.lines.some(({ blank, sizes }) => blank.suppliedBy !== 'maker' && sizes.length > 0),
  );
  const known = {
    deposit: money(deposit),
    balance: isOnCredit ? null : money(balance),
    total: money(sums.total),
    creditDays: isOnCredit ? count(creditDays) : null,
    delivery: deliveryOf(order, customer, labels),
    ready: day(dates.ready),
    approveBy: day(dates.approveBy),
    leadDays: count(dates.leadDays),
    revisions: count(revisionsIncluded),
    remakeDays: count(remakeDays),
    claimDays: count(claimDays),
    spares: spares === 0 ? null : count(spares),
  } satisfies Record<TermFigure, string | null>;
  const agreed = order.agreed.trim();
  return {
    texts: termTexts(papers, labels, heading.language, ownGarments).map((term) => ({
      key: term.key,
      ...cut(term),
    })),
    figures: toldFigures(known),
    besides: agreed === '' ? [] : [cut({ heading: labels.termAgreed, text: agreed })],
  };
}

/** @returns the terms of a quote with figures of a paper of it; what is not given is as the quote has it. */
export function termsWith({ texts, figures, besides }: QuotedTerms, own: TermFacts = {}): Quote['terms'] {
  return [...filledTerms(texts, { ...figures, ...own }).map(cut), ...besides];
}

/** @returns what a bill says of the terms of its quote: whatever is to be done before it is written is told no more. */
export const termsOfBill = ({ texts, figures }: QuotedTerms, own: TermFacts): Invoice['terms'] =>
  filledTerms(
    texts.filter(({ key }) => key !== null && billed.includes(key)),
    { ...figures, ...own },
  ).map(cut);

/** @returns what is to pay, for a paper that comes to another sum than its quote. */
export function moneyOfTerms(
  heading: OfTerms['heading'],
  { figures }: QuotedTerms,
  { total, deposit }: { readonly total: number; readonly deposit: number },
): TermFacts {
  const money = moneyIn(heading);
  const { creditDays } = figures;
  return {
    total: money(total),
    deposit: money(deposit),
    // On credit nothing is to pay before the goods go out.
    balance: creditDays === undefined ? money(total - deposit) : null,
  };
}

/** @returns what is still to pay by an invoice: nothing of a deposit that came, and no credit beside its own day. */
export function duesOfTerms(
  heading: OfTerms['heading'],
  { issuedOn, total, depositLeft, due, dueOn, suppliedOn }: Dues,
): TermFacts {
  const [money, { count }] = [moneyIn(heading), figuresOf(heading)];
  const first = Math.max(0, Math.min(due, depositLeft));
  const days = dueOn === null ? 0 : daysBetween(issuedOn, dueOn);
  return {
    total: money(total),
    deposit: dueOn === null ? money(first) : null,
    balance: dueOn === null && suppliedOn === null ? money(due - first) : null,
    creditDays: due > 0 && days > 0 ? count(days) : null,
    ...(suppliedOn === null ? {} : { ready: null, approveBy: null, leadDays: null }),
  };
}

// Helpers

type QuotedTerms = Quote['owner']['terms'];

const billed: readonly TermKey[] = ['payment', 'claims', 'late'];

interface Dues {
  readonly issuedOn: string;
  readonly total: number;
  readonly depositLeft: number;
  readonly due: number;
  readonly dueOn: string | null;
  readonly suppliedOn: string | null;
}

const cut = ({ heading, text }: Quote['terms'][number]): Quote['terms'][number] => ({
  heading: shortened(heading, 80),
  text: shortened(text, 2000),
});

/** A figure of nothing is none. */
function moneyIn(heading: OfTerms['heading']): (minor: number) => string | null {
  const figures = figuresOf(heading);
  return (minor) => (minor <= 0 ? null : `${figures.money(minor)} ${heading.currency}`);
}

/** @returns how the goods reach the customer, and where; null where that is not decided. */
function deliveryOf(order: Pick<Order, 'delivery'>, customer: Customer, labels: Labels): string | null {
  const place = textLines(addressOfGoods(order, customer) ?? '').join(', ');
  const to = { place: apart(place) };
  const { way } = order.delivery;
  switch (way) {
    case null:
      return null;
    case 'fetched':
      return labels.wayFetched;
    case 'brought':
      return place === '' ? labels.wayBrought : filled(labels.broughtTo, to);
    case 'sent':
      return place === '' ? labels.waySent : filled(labels.sentTo, to);
    default:
      return way satisfies never;
  }
}

const toldFigures = (known: TermFacts): Record<string, string> =>
  Object.fromEntries(
    Object.entries(known).flatMap(([name, value]) => (value == null ? [] : [[name, value]])),
  );

/** How many more than they need customers are to bring, as the checks of the jobs say. */
const sparesToBring = (jobs: readonly PricedJob[]): number =>
  jobs
    .flatMap(({ findings }) => findings)
    .reduce(
      (sum, finding) =>
        finding.id === 'QTY-08' && finding.variant === 'ask'
          ? sum + finding.facts.ask - finding.facts.pieces
          : sum,
      0,
    );
