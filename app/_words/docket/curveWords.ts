import { amountWords } from '@/app/_words/amountWords';
import { findingWords } from '@/app/_words/findings/findingWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import type { BetterFrom } from '@/lib/studies/curve/betterFrom';
import type { CostCurve, CurveAnswer } from '@/lib/studies/curve/curveAnswer';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import type { QuantitySpot } from '@/lib/studies/curve/quantitySpots';
import type { SpotReason } from '@/lib/studies/curve/usedUpAt';
import type { Job } from '@/shared/schemas/job';
import type { AnswerWords } from './answerWords';
import type { PieceWord } from './pieceWords';

/** What a batch comes to, in one line. */
export function pointWords(
  point: BatchPoint,
  piece: PieceWord,
  terms: TaxTerms,
  formatter: Formatter,
): string {
  const { n, fullCost, price, margin, payPerHour } = point;
  return `${formatter.count(n, piece.one, piece.many)}: ${formatter.money(fullCost / n)} each in full, order total ${formatter.money(terms.written(price))}, margin ${formatter.share(margin)}, pays you ${formatter.money(payPerHour)} an hour`;
}

/** One figure of a batch. */
export interface CurveFigure {
  readonly name: string;
  readonly text: string;
  /** What kind of figure it is, where the page tells the same one elsewhere. */
  readonly marks?: 'margin' | 'pay';
}

/** The five figures of a batch, money as the maker writes it and without its name. */
export function curveFigures(
  { n, fullCost, price, profit, margin, payPerHour }: BatchPoint,
  piece: PieceWord,
  terms: TaxTerms,
  context: TextContext,
): readonly CurveFigure[] {
  const money = (amount: number) => amountWords(amount, context.currency, context.locale);
  return [
    { name: `a ${piece.one} costs`, text: money(fullCost / n) },
    { name: 'order total', text: money(terms.written(price)) },
    { name: 'margin', text: formatterFor(context).share(margin), marks: 'margin' },
    { name: 'profit', text: money(profit) },
    { name: 'pays you an hour', text: money(payPerHour), marks: 'pay' },
  ];
}

/** The titles of the drawing's axes, and the name of what lies below nothing. */
export function curveTitles(measure: CurveMeasure, piece: PieceWord, currency: string) {
  const titles = {
    margin: { upTitle: 'margin, after your pay and fees', lossTitle: 'you pay to work' },
    each: { upTitle: `cost and price of a ${piece.one}, ${currency}`, lossTitle: null },
    profit: { upTitle: `profit of the order, ${currency}`, lossTitle: 'you pay to work' },
  } as const satisfies Readonly<Record<CurveMeasure, unknown>>;
  return { ...titles[measure], acrossTitle: `${piece.many} in the order, doubling scale` };
}

/** What the curve says in one line: of the batch that is looked at, or of all of them. */
export function curveAnswerWords(
  study: CostCurve,
  looked: BatchPoint | null,
  piece: PieceWord,
  context: TextContext,
): AnswerWords {
  const formatter = formatterFor(context);
  const money = (amount: number) => amountWords(amount, context.currency, context.locale);
  const { breakEven, knee, to } = study;
  if (looked !== null)
    return {
      key: `${formatter.count(looked.n, piece.one, piece.many)} ${looked.n === 1 ? 'leaves' : 'leave'} ${formatter.number(looked.margin * 100, 0)} %`,
      after: ` and ${looked.n === 1 ? 'pays' : 'pay'} ${money(looked.payPerHour)} an hour`,
    };
  if (breakEven === null)
    return {
      key: `No order up to ${formatter.number(to, 0)} pays its way`,
      after: ': ask more, or make it cost less',
    };
  const key =
    breakEven.first === 1
      ? `Pays its way from the first ${piece.one}`
      : `Pays its way from ${breakEven.first}`;
  return knee === null || knee.n <= breakEven.first
    ? { key }
    : { key, after: `; most of the margin is won by ${knee.n}` };
}

/** What the batches are sold at, after a count of pieces. */
export function soldWords(
  study: Pick<CostCurve, 'priced' | 'askedEach'>,
  flatPrice: number | null,
  context: TextContext,
): string {
  const money = (amount: number) => amountWords(amount, context.currency, context.locale);
  const { priced, askedEach } = study;
  if (priced === 'flat' && flatPrice !== null) return `at ${money(flatPrice)}`;
  if (priced === 'suggested')
    return askedEach === null ? 'as suggested' : `at ${money(askedEach)}, suggested`;
  return askedEach === null ? 'at the asked prices' : `at ${money(askedEach)}`;
}

/** At which price the curve is drawn. */
export function pricedWords(
  priced: CostCurve['priced'],
  flatPrice: number | null,
  formatter: Formatter,
): string {
  switch (priced) {
    case 'asked':
      return 'at the asked prices';
    case 'flat':
      return `at ${formatter.money(flatPrice ?? 0)} a piece`;
    case 'suggested':
      return 'at the suggested price';
    default:
      return priced satisfies never;
  }
}

/** The curve in one sentence, for who does not see it. */
export function summaryWords({ points, breakEven, asked, to }: CostCurve, formatter: Formatter): string {
  const told = [1, breakEven?.first, Math.min(asked, to), to];
  const figures = points
    .filter(({ n }) => told.includes(n))
    .map(({ n, margin }) => `${formatter.share(margin)} at ${formatter.number(n, 0)}`);
  return `Margin from 1 to ${formatter.count(to, 'piece')}: ${figures.join(', ')}.`;
}

/** The quantities that mean something, in sentences. */
export function curveWords(study: CostCurve, job: Job, formatter: Formatter): readonly string[] {
  const { points, to, asked } = study;
  return [
    ...(asked > to
      ? [
          `The job asks for ${formatter.count(asked, 'piece')}, more than the ${formatter.number(to, 0)} that are drawn: its own figures stand in the sections above.`,
        ]
      : []),
    ...(points.length < to
      ? [
          `A formula of your own gives no number for ${formatter.count(to - points.length, 'quantity', 'quantities')}: they are left out.`,
        ]
      : []),
    ...priceWords(study, formatter),
    ...study.spots.map((spot) => spotWords(spot, asked, job, formatter)),
  ];
}

function priceWords({ breakEven, knee, to }: CostCurve, formatter: Formatter): readonly string[] {
  if (breakEven === null)
    return [
      `At this price no batch up to ${formatter.count(to, 'piece')} pays its way: each loses money. Ask more, or make it cost less.`,
    ];
  const { first, lasting } = breakEven;
  const again =
    lasting === first
      ? ''
      : lasting === null
        ? ' A later step of sheets or sessions takes it under again.'
        : ` A step of sheets or sessions takes it under again; from ${formatter.number(lasting, 0)} on it stays above.`;
  return [
    `It pays its way from ${formatter.count(first, 'piece')}.${again}`,
    ...(knee === null
      ? []
      : [
          `The knee is at ${formatter.number(knee.n, 0)}: up to there, doubling the batch adds ten points of margin or more; from there, fewer (${formatter.number(knee.doublingAdds * 100, 1)} at the knee).`,
        ]),
  ];
}

/** What another way of making the job would do, in a sentence. */
export function variantWords(
  name: string,
  other: CurveAnswer,
  better: BetterFrom | null,
  to: number,
  context: TextContext,
): string {
  if (other.kind === 'stopped') {
    const why = other.why === null ? 'its sums give no number.' : findingWords(other.why, context).sentence;
    return `The job ${name} cannot be made: ${why}`;
  }
  const formatter = formatterFor(context);
  if (better === null) return `The job ${name} costs no less at any batch up to ${formatter.number(to, 0)}.`;
  const { first, lasting } = better;
  if (lasting === 1) return `The job ${name} costs less at every batch, and leaves more at the same price.`;
  return lasting === null
    ? `The job ${name} costs less now and then, first at ${formatter.number(first, 0)}, but not at every larger batch.`
    : `The job ${name} costs less from ${formatter.count(lasting, 'piece')} on, and leaves more at the same price.`;
}

function spotWords(
  { n, reasons, addedCost }: QuantitySpot,
  asked: number,
  job: Job,
  formatter: Formatter,
): string {
  const why = [...new Set(reasons.map((reason) => reasonWords(reason, job)))].join(' and ');
  return `At ${formatter.number(n, 0)} ${why}: ${formatter.count(n - asked, 'piece')} more cost ${formatter.money(addedCost)} in all.`;
}

function reasonWords(reason: SpotReason, job: Job): string {
  switch (reason.kind) {
    case 'sheet': {
      const line = job.lines.find(({ id }) => id === reason.lineId);
      const placement = line?.placements.find(({ id }) => id === reason.placementId);
      return `the last sheet of ${placement?.name ?? 'a print'} is just full`;
    }
    case 'session':
      return 'a session is just full';
    case 'pack':
      return `a pack of ${reason.size} is just used up`;
    default:
      return reason satisfies never;
  }
}
