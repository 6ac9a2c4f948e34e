import { pieceWords } from '@/app/_words/docket/pieceWords';
import type { findingWords } from '@/app/_words/findings/findingWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobFigures } from '@/lib/costing/jobFigures';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { ownEntry } from '@/lib/job/ownEntry';
import { formatMinor, toMinor } from '@/shared/money';
import type { Blank } from '@/shared/schemas/blank';
import { type Job, type JobState, jobStates } from '@/shared/schemas/job';

/** What a maker calls how far a job has come. */
const stateWords: Readonly<Record<JobState, string>> = {
  draft: 'Being priced',
  quoted: 'Quoted',
  agreed: 'Agreed',
  done: 'Done',
};

export const jobStateChoices = jobStates.map((value) => ({ value, label: stateWords[value] }));

/** @returns the pieces of a job by what they are: “37 shirts”, “12 pieces” where they differ. */
export function piecesOfJob(
  { lines }: Pick<Job, 'lines'>,
  blanks: Readonly<Record<string, Blank>>,
  formatter: Formatter,
): string {
  const words = lines.map(({ blankId }) => pieceWords(ownEntry(blanks, blankId)));
  const [first] = words;
  const piece =
    first !== undefined && words.every(({ many }) => many === first.many) ? first : pieceWords(undefined);
  return formatter.count(jobFacts({ lines }).pieces, piece.one, piece.many);
}

/** @returns the asked price of a piece, or the range of them: “19.00 to 21.50”; null where none is decided. */
export function askedWords(job: Pick<Job, 'lines'>, { currency, locale }: TextContext): string | null {
  const { asked } = jobFacts(job);
  if (asked === null) return null;
  const money = (amount: number) => formatMinor(toMinor(amount, currency), currency, usableLocale(locale));
  return asked.from === asked.to ? money(asked.from) : `${money(asked.from)} to ${money(asked.to)}`;
}

/**
 * @param say null while the words of findings are being fetched
 * @returns why a job has no price
 */
export const stoppedWords = (
  { why }: Extract<JobFigures, { kind: 'stopped' }>,
  say: typeof findingWords | null,
  context: TextContext,
): string => (why === null ? 'Its sums give no number.' : (say?.(why, context).sentence ?? '…'));

/** How many jobs there are of each kind, once every one is costed. */
interface JobCounts {
  /** Leave at least the maker's own pay an hour. */
  readonly pays: number;
  readonly less: number;
  readonly stopped: number;
}

/** @returns what all listed jobs come to, in one sentence: its beginning, and the rest. */
export function jobsWords(
  { pays, less, stopped }: JobCounts,
  wage: number | null,
  context: TextContext,
): readonly [string, string] {
  const withoutPrice =
    stopped > 0 ? [`${spelledNumber(stopped)} ${stopped === 1 ? 'has' : 'have'} no price`] : [];
  if (wage === null) {
    const priced = pays + less;
    return [`${jobCount(priced)} ${priced === 1 ? 'has' : 'have'} a price`, withoutPrice.join('')];
  }
  const paysLess = less > 0 ? [`${spelledNumber(less)} ${less === 1 ? 'pays' : 'pay'} less`] : [];
  return [
    `${jobCount(pays)} ${pays === 1 ? 'pays' : 'pay'} your ${formatterFor(context).money(wage)} an hour`,
    [...paysLess, ...withoutPrice].join(', '),
  ];
}

/** @returns what a copy does not bear of the job it was made of; null where it bears all. */
export function leftOutWords(
  { wantedOn, waivers }: { readonly wantedOn: string | null; readonly waivers: number },
  formatter: Formatter,
): string | null {
  const left = [
    wantedOn !== null && `the day it was wanted, ${formatter.day(wantedOn)}`,
    waivers > 0 &&
      `${formatter.count(waivers, 'stop')} passed with a reason, because a reason holds for one order`,
  ].filter((part) => part !== false);
  return left.length === 0 ? null : `Left out: ${left.join('; ')}.`;
}

// Helpers

function jobCount(count: number): string {
  return `${withCapital(spelledNumber(count))} ${count === 1 ? 'job' : 'jobs'}`;
}
