import type { SectionState } from '@/app/_sections/sections';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { rollUsed } from '@/lib/grid/rollUsed';
import { ladderOf } from '@/lib/price/list/ladder';
import { taxTerms } from '@/lib/price/taxTerms';
import { chargeCount } from '@/lib/studies/charges/chargeCount';
import { isStanding } from '@/shared/finding';
import { formatMinor, toMinor } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { wantedPieces } from '@/shared/wantedPieces';
import { type CheckGroup, toSettle } from './checkGroups';
import { costTaxWords } from './costWords';
import type { SectionId } from './docketSections';
import { pieceOfJob } from './jobAnswerWords';

interface StateOfJob {
  readonly input: JobInput;
  readonly isChecked: boolean;
  readonly checks: readonly CheckGroup[];
  /** Questions about the workshop that stand open. */
  readonly questions: number;
  /** Of the newest sums; null while a stop withholds them. */
  readonly costSheet: JobAnswer['costSheet'];
  readonly prices: JobAnswer['prices'];
}

export type SectionStates = Readonly<Record<SectionId, SectionState>>;

/**
 * The state of every section, from the one answer of the sums, so that rail, chips and sheet say the same.
 *
 * @param state the job as it stands, and the newest sums
 */
export function sectionStates(state: StateOfJob, context: TextContext): SectionStates {
  const formatter = formatterFor(context);
  const { input, isChecked, checks, costSheet, prices } = state;
  const { currency } = input.workshop;
  const money = (amount: number) => formatMinor(toMinor(amount, currency), currency, context.locale);
  const piece = pieceOfJob(input);
  // Nothing is said before the first check; after it, what has no figures waits for a stop.
  const waits = plain(isChecked ? 'waits' : '');
  const pieces = wantedPieces(input.job.lines);
  return {
    'the-job':
      pieces === 0
        ? { text: 'no pieces yet', tone: 'todo', count: 0 }
        : plain(formatter.count(pieces, piece.one, piece.many)),
    checks: isChecked ? checksState(checks, state.questions) : plain(''),
    sheets: costSheet === null ? waits : plain(sheetsOf(input, costSheet, formatter)),
    'cost-sheet':
      costSheet === null
        ? waits
        : plain(
            [
              `${money(costSheet.fullCost / wholeJob(costSheet, 'goodPieces'))} a ${piece.one}`,
              costTaxWords(taxTerms(costSheet).inside),
            ]
              .filter((part) => part !== '')
              .join(', '),
          ),
    prices: prices === null ? waits : plain(pricesOf(prices, piece.one, context.locale)),
    curve: prices === null ? waits : plain(`${formatter.share(prices.margin)} margin`),
    levers: prices === null ? waits : plain(`${money(prices.payPerHour)} an hour`),
    charges: prices === null ? waits : plain(formatter.count(chargeCount(input.job), 'charge')),
    channels: plain(formatter.count(input.workshop.channels.length, 'way')),
  };
}

// Helpers

const plain = (text: string): SectionState => ({ text, tone: 'plain', count: 0 });

function checksState(checks: readonly CheckGroup[], questions: number): SectionState {
  const stops = checks.filter(({ finding }) => isStanding(finding)).length;
  if (stops > 0) return { text: stops === 1 ? '1 stop' : `${stops} stops`, tone: 'stop', count: stops };
  const count = toSettle(checks);
  if (count > 0) return { text: `${count} to settle`, tone: 'todo', count };
  if (questions === 0) return plain('all well');
  return {
    text: questions === 1 ? '1 question' : `${questions} questions`,
    tone: 'todo',
    count: questions,
  };
}

/** The same number, or the same length of roll, as the answer line of the section. */
function sheetsOf(
  { job, workshop }: JobInput,
  costs: NonNullable<JobAnswer['costSheet']>,
  formatter: Formatter,
): string {
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const used = paper === undefined ? null : rollUsed(costs, paper);
  return used === null
    ? formatter.number(expectedSheets(costs), 0)
    : `${formatter.number(used.lengthMm / 1000, 1)} m`;
}

/**
 * What a piece of the first line costs by its list, from the dearest step to the cheapest, sums of small orders apart;
 * of one price what is asked, else what is suggested.
 */
function pricesOf(
  { lists, offer, currency }: NonNullable<JobAnswer['prices']>,
  piece: string,
  locale: string,
): string {
  const [list] = lists;
  const [offered] = offer.lines;
  if (list?.rule === 'onePrice' && offered !== undefined)
    return `${formatMinor(offered.each, currency, locale)} a ${piece}`;
  const each = list === undefined ? [] : ladderOf(list).filter(({ kind }) => kind === 'each');
  const [first] = each;
  const last = each.at(-1);
  if (first === undefined || last === undefined) return '';
  const from = formatMinor(first.amount, currency, locale);
  return first === last ? from : `${from} to ${formatMinor(last.amount, currency, locale)}`;
}
