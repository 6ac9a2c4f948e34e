import type { BuyingAsked } from '@/lib/buying/buyingAsked';
import { planBuying } from '@/lib/buying/planBuying';
import { jobFigures } from '@/lib/costing/jobFigures';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { runAnswer } from '@/lib/making/study/runAnswer';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import { type OpenAsked, openNeeds } from '@/lib/openWork/openNeeds';
import { compareItem, type IssuedItem } from '@/lib/priceLists/compareItem';
import { freezeItem } from '@/lib/priceLists/freezeItem';
import { alternativeOffers } from '@/lib/quotes/alternatives/alternativeOffers';
import { makeQuote } from '@/lib/quotes/makeQuote';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { rushCharge } from '@/lib/quotes/rushCharge';
import { stillHolds } from '@/lib/quotes/stillHolds';
import { MakingKept } from '@/lib/stall/plan/costs/makingKept';
import { planStall } from '@/lib/stall/plan/planStall';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import { benchAnswer } from '@/lib/studies/bench/benchAnswer';
import { type BreaksQuestion, breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { channelsAnswer } from '@/lib/studies/channels/channelsAnswer';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { type CostCurveQuestion, curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { type GoalSeekQuestion, goalSeekAnswer } from '@/lib/studies/goalSeek/goalSeekAnswer';
import { type LeversQuestion, leversAnswer } from '@/lib/studies/levers/leversAnswer';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import { trimAnswer } from '@/lib/studies/sheets/trimAnswer';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { PriceListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';

/**
 * Everything beside the prices that is too long for the page's thread. Each is a pure function of the documents and
 * perhaps of a question; null while the job cannot be costed.
 */
export const studies = {
  figures: (input: JobInput, grid: Grid) => jobFigures(input, grid),
  sheets: (input: JobInput, grid: Grid) => sheetsAnswer(input, grid),
  curve: (input: JobInput, grid: Grid, question: CostCurveQuestion) => curveAnswer(input, grid, question),
  charges: (input: JobInput, grid: Grid) => chargesAnswer(input, grid),
  channels: (input: JobInput, grid: Grid) => channelsAnswer(input, grid),
  freezeItem: (input: JobInput, grid: Grid, item: PriceListItem) => freezeItem(input, grid, item),
  compareItem: (input: JobInput, grid: Grid, item: IssuedItem) => compareItem(input, grid, item),
  levers: (input: JobInput, grid: Grid, question: LeversQuestion) => leversAnswer(input, grid, question),
  seek: (input: JobInput, grid: Grid, question: GoalSeekQuestion) => goalSeekAnswer(input, grid, question),
  list: (input: JobInput, grid: Grid, question: BreaksQuestion) => breaksAnswer(input, grid, question),
  trim: (input: JobInput, grid: Grid, question: { readonly artworkId: string }) =>
    trimAnswer(input, grid, question),
  bench: (input: JobInput, grid: Grid) => benchAnswer(input, grid),
};

type Studies = typeof studies;

/** What is asked of a whole order, with everything its jobs are costed from; it always has an answer. */
export const orderStudies = {
  quote: (asked: QuoteAsked, grid: Grid) => makeQuote(asked, grid),
  offers: (asked: QuoteAsked, grid: Grid) => alternativeOffers(asked, grid),
  rush: (asked: QuoteAsked, grid: Grid, share: number) => rushCharge(asked, grid, share),
  stillHolds: (asked: QuoteAsked, grid: Grid, quote: Quote) => stillHolds(quote, asked, grid),
};

type OrderStudies = typeof orderStudies;

export type OrderStudyName = keyof OrderStudies;

/** What is asked beside the order; null where a study asks nothing more. Plain data only. */
export type OrderStudyQuestion<Name extends OrderStudyName> =
  Parameters<OrderStudies[Name]> extends [QuoteAsked, Grid, infer Question] ? Question : null;

export type OrderStudyAnswer<Name extends OrderStudyName> = ReturnType<OrderStudies[Name]>;

/** Of the thread in which studies are answered, as its grid is. */
const making = new MakingKept();

/** What is asked of a stall day, with everything it is planned from; it always has an answer. */
export const stallStudies = {
  plan: (asked: StallAsked, grid: Grid) => planStall(asked, grid, making),
};

export type StallStudyName = keyof typeof stallStudies;

export type StallStudyAnswer<Name extends StallStudyName> = ReturnType<(typeof stallStudies)[Name]>;

/** What is asked of a buying list, with everything it is worked out from; it always has an answer. */
export const buyingStudies = {
  plan: (asked: BuyingAsked, grid: Grid) => planBuying(asked, grid),
};

export type BuyingAnswer = ReturnType<(typeof buyingStudies)['plan']>;
/** What is asked of all work that is going to be done; it always has an answer. */
export const openStudies = {
  needs: (asked: OpenAsked, grid: Grid) => openNeeds(asked, grid),
};

/** What is asked of a run, with everything it is planned from; it always has an answer. */
export const runStudies = {
  plan: (asked: RunQuestion, grid: Grid) => runAnswer(asked, grid),
};

export type RunStudyName = keyof typeof runStudies;

export type RunStudyAnswer<Name extends RunStudyName> = ReturnType<(typeof runStudies)[Name]>;

/** Those asked away from the job's own screen, that are to say what it says once it has ended looking for fewer sheets. */
export const thorough: ReadonlySet<StudyName> = new Set(['figures', 'freezeItem', 'compareItem', 'bench']);

export type StudyName = keyof Studies;

/** What is asked beside the documents; null where a study asks nothing more. Plain data only. */
export type StudyQuestion<Name extends StudyName> =
  Parameters<Studies[Name]> extends [JobInput, Grid, infer Question] ? Question : null;

export type StudyAnswer<Name extends StudyName> = NonNullable<ReturnType<Studies[Name]>>;

/** What the page asks of the study worker. */
export type StudyRequest =
  | {
      readonly of: 'job';
      readonly name: StudyName;
      readonly input: JobInput;
      readonly question: unknown;
    }
  | {
      readonly of: 'order';
      readonly name: OrderStudyName;
      readonly asked: QuoteAsked;
      readonly question: unknown;
    }
  | { readonly of: 'stall'; readonly name: StallStudyName; readonly asked: StallAsked }
  | { readonly of: 'buying'; readonly name: keyof typeof buyingStudies; readonly asked: BuyingAsked }
  | { readonly of: 'open'; readonly name: keyof typeof openStudies; readonly asked: OpenAsked }
  | { readonly of: 'run'; readonly name: RunStudyName; readonly asked: RunQuestion };
