import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import { sheetsInWords, volumeWords } from '@/app/_words/docket/sheetWords';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { minutesWords } from '@/app/_words/minutesWords';
import { dueWords, shortDay } from '@/app/_words/orders/orderDayWords';
import { spelledNumber } from '@/app/_words/spelledNumber';
import type { KeptWhy, MakingJob } from '@/lib/stall/making/makingJobs';
import type { MakingTimes } from '@/lib/stall/making/makingTimes';
import type { Sheet, Workshop } from '@/shared/schemas/workshop';

/** What it takes to press for a stall day, as far as it is known. */
export interface SeenMaking {
  readonly isPlanned: boolean;
  readonly isWaiting: boolean;
  /** Names of jobs that cannot be costed. */
  readonly stopped: readonly string[];
  /** Pieces to press; 0 where all of it lies at home. */
  readonly pieces: number;
  /** Paid minutes and heatings-up of all jobs; null while some are not known. */
  readonly work: { readonly minutes: number; readonly sessions: number } | null;
  readonly times: MakingTimes | null;
  readonly hasCalendar: boolean;
  readonly firstDay: string | null;
  readonly today: string;
  readonly ordersLeftOut: number;
}

/** @example '12 h 40 min in three sessions, done by Thursday, December 17' */
export function makingAnswer(seen: SeenMaking, locale: string): AnswerWords {
  const { isPlanned, isWaiting, stopped, pieces, work, times, hasCalendar, today } = seen;
  if (!isPlanned) return { key: 'Nothing to press yet:', after: ' the plan comes first' };
  if (pieces === 0) return { key: 'Nothing to press:', after: ' all of it lies finished at home' };
  if (stopped.length > 0) return { key: 'Not known:', after: ` a stop stands in ${listed(stopped)}` };
  if (work === null || (isWaiting && times === null)) return { key: 'Being worked out' };
  const key = minutesWords(work.minutes, locale);
  const planned = times?.planned ?? null;
  const sessions = planned?.kind === 'planned' ? planned.plan.sessions.length : work.sessions;
  const many =
    sessions === 0 ? '' : ` in ${spelledNumber(sessions)} ${sessions === 1 ? 'session' : 'sessions'}`;
  if (!hasCalendar)
    return { key, after: `${many}; no day is known: say in the workshop when the bench is free` };
  switch (planned?.kind) {
    case 'planned':
      return { key, after: `${many}, done by ${wantedDayWords(planned.plan.lastDay, today, locale)}` };
    case 'noBlock':
      return {
        key,
        after: `; no block of the bench is long enough for ${minutesWords(planned.neededMinutes, locale)} at the hot press`,
      };
    case 'never':
      return { key, after: `${many}; no end of it within the two years that are planned` };
    default:
      return { key, after: many };
  }
}

interface MakingLine {
  readonly words: string;
  readonly isCaution: boolean;
}

/** @returns whether it is done before the day, and the last days on which it still can be. */
export function makingLines(
  { times, firstDay, today, ordersLeftOut, pieces }: SeenMaking,
  locale: string,
  formatter: Formatter,
): readonly MakingLine[] {
  if (times === null || pieces === 0) return [];
  const { planned, isKept, latest } = times;
  const lines: MakingLine[] = [];
  if (firstDay !== null && !isKept && planned.kind === 'planned') {
    lines.push({
      words: `It is not done before ${shortDay(firstDay, today, locale)} with a working day to spare, or makes an accepted order late. Bring fewer, or find more hours at the bench.`,
      isCaution: true,
    });
  }
  if (planned.kind === 'planned' && planned.plan.extra.sessions > 0) {
    lines.push({
      words: `No block holds a whole session, so the press is heated up ${formatter.count(planned.plan.extra.sessions, 'time')} more than its jobs count: ${minutesWords(planned.plan.extra.minutes, locale)} more.`,
      isCaution: true,
    });
  }
  if (latest?.kind === 'latest') {
    const { orderBlanksBy, printBy, pressOn } = latest.dates;
    const last = [
      ...(orderBlanksBy === null ? [] : [{ what: 'Order the blanks by', day: orderBlanksBy }]),
      ...(printBy === null ? [] : [{ what: 'Print by', day: printBy }]),
      { what: 'Begin to press by', day: pressOn },
    ];
    for (const { what, day } of last)
      lines.push({
        words: `${what} ${shortDay(day, today, locale)}, ${dueWords(day, today, formatter)}.`,
        isCaution: day < today,
      });
  }
  if (ordersLeftOut > 0)
    lines.push({
      words: `${formatter.count(ordersLeftOut, 'accepted order')} could not be reckoned and ${ordersLeftOut === 1 ? 'is' : 'are'} left out: the bench looks freer than it is.`,
      isCaution: true,
    });
  return lines;
}

/** @example 'Fern shirt: S 3, M 6, L 7' */
export function pressRowsWords(rows: MakingJob['rows'], formatter: Formatter): readonly string[] {
  const lines = new Map<string, MakingJob['rows'][number][]>();
  for (const row of rows) lines.set(row.lineId, [...(lines.get(row.lineId) ?? []), row]);
  return [...lines.values()].map((ofLine) => {
    const [first] = ofLine;
    const sizes = ofLine
      .filter(({ press }) => press > 0)
      .map(({ size, press }) => `${size} ${formatter.number(press, 0)}`.trim());
    const total = ofLine.reduce((sum, { now }) => sum + now, 0);
    const changed = ofLine.some(({ now, press }) => now !== press);
    const said = changed && total > 0 ? `; the job says ${formatter.number(total, 0)} now` : '';
    return `${first?.line ?? ''}: ${sizes.join(', ') || 'none'}${said}`;
  });
}

const whyWords: Readonly<Record<KeptWhy, string>> = {
  done: 'is made',
  order: 'is of an order',
  promised: 'is promised to somebody',
  otherDay: 'is planned for another stall day',
  idleLine: 'has designs of which nothing is to be pressed',
  otherLines: 'has designs that are not brought',
};

/** @returns what a job is called on the screen of its stall day, which says itself for which day that is. */
export function nameOfDay(jobName: string, dayName: string): string {
  const after = ` for ${dayName}`;
  return jobName.endsWith(after) ? jobName.slice(0, -after.length) : jobName;
}

/** @returns what becomes of a job; null where it takes the numbers itself. */
export function keptWords({ designName, why, jobId }: MakingJob): string | null {
  if (why === null) return null;
  return `“${designName}” ${whyWords[why]} and stays as it is: ${
    jobId === null ? 'a job for this day is made beside it' : 'its job for this day takes the numbers'
  }.`;
}

/** What notes that a job was pressed, where its pieces go in as few words as a thumb has room for. */
export const pressedWords = (pieces: number, isLoaded: boolean, { number }: Formatter): string =>
  `Pressed: ${number(pieces, 0)} ${isLoaded ? 'into the car' : 'home'}`;

/** @returns how many goods nobody ever counted at home; null where all were. */
export const uncountedWords = (uncounted: number, formatter: Formatter): string | null =>
  uncounted === 0
    ? null
    : `Nobody counted finished pieces at home of ${formatter.count(uncounted, 'design and size', 'designs and sizes')}: all of them are pressed.`;

interface Paper {
  readonly sheet: Sheet;
  readonly sheets: number;
  readonly rollMm: number | null;
}

/** @example '106 Letter sheets and 74 mL of ink.' */
export function materialWords(
  papers: readonly Paper[],
  inkMl: number,
  units: Workshop['units'],
  formatter: Formatter,
  locale: string,
): string {
  const told = papers.map(({ sheet, sheets, rollMm }) =>
    rollMm === null
      ? sheetsInWords(sheets, sheet, formatter)
      : `${formatter.number(rollMm / 1000, 1)} m of ${sheet.name}`,
  );
  return `${listed([...told, `${volumeWords(inkMl, units, locale, 0)} of ink`])}.`;
}
