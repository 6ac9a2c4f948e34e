import { termsFor } from '@/lib/papers/terms/termsFor';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import type { Order } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import { shortened } from './asName';
import type { PricedJob } from './pricedJob';

interface OfTerms {
  readonly heading: Pick<Quote, 'language' | 'locale' | 'length' | 'currency'>;
  readonly workshop: Pick<Workshop, 'papers' | 'quoting'>;
  readonly order: Pick<Order, 'agreed'>;
  readonly jobs: readonly PricedJob[];
  readonly labels: Labels;
  readonly sums: Quote['sums'];
  readonly deposit: number;
  readonly balance: number;
  readonly dates: Quote['dates'];
  readonly revisionsIncluded: number;
}

/**
 * The terms of a quote with its own figures, in the words of the workshop, and what was agreed besides. A balance that
 * is paid after the invoice is none before the goods go out, and a figure of nothing is none.
 */
export function termsOfQuote({
  heading,
  workshop: { papers, quoting },
  order,
  jobs,
  labels,
  sums,
  deposit,
  balance,
  dates,
  revisionsIncluded,
}: OfTerms): Quote['terms'] {
  const figures = figuresOf(heading);
  const money = (minor: number) => (minor <= 0 ? null : `${figures.money(minor)} ${heading.currency}`);
  const day = (on: string | null) => (on === null ? null : figures.day(on));
  const count = (many: number | null) => (many === null ? null : figures.count(many));
  const { creditDays, remakeDays, claimDays } = quoting;
  const isOnCredit = creditDays !== null && creditDays > 0;
  const spares = sparesToBring(jobs);
  const terms = termsFor(papers, labels, heading.language, {
    deposit: money(deposit),
    balance: isOnCredit ? null : money(balance),
    total: money(sums.total),
    creditDays: isOnCredit ? count(creditDays) : null,
    ready: day(dates.ready),
    approveBy: day(dates.approveBy),
    leadDays: count(dates.leadDays),
    revisions: count(revisionsIncluded),
    remakeDays: count(remakeDays),
    claimDays: count(claimDays),
    spares: spares === 0 ? null : count(spares),
    ownGarments: jobs.some(({ costed }) =>
      costed.laidOut.job.lines.some(({ blank, sizes }) => blank.suppliedBy !== 'maker' && sizes.length > 0),
    ),
  });
  const agreed = order.agreed.trim();
  return [...terms, ...(agreed === '' ? [] : [{ heading: labels.termAgreed, text: agreed }])].map(
    ({ heading: about, text }) => ({ heading: shortened(about, 80), text: shortened(text, 2000) }),
  );
}

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
