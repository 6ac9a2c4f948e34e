import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { dueWords, shortDay } from '@/app/_words/orders/orderDayWords';
import { planMinutes } from '@/lib/calendar/benchDays';
import type { Calendar } from '@/lib/calendar/calendar';
import type { Latest } from '@/lib/calendar/orderDates';
import type { Pace } from '@/lib/calendar/pace';
import type { Planned } from '@/lib/calendar/planWork';
import type { OrderBench } from '@/lib/orders/bench/orderLoad';

interface SeenOnBench {
  /** Null where nobody has said when the bench is free. */
  readonly calendar: Calendar | null;
  /** Null where the order takes no time of the bench any more, or nothing of it is known. */
  readonly own: OrderBench | null;
  readonly planned: Planned | null;
  readonly latest: Latest | null;
  /** Of all its work, done or not; null where none is known. */
  readonly pace: Pace | null;
  readonly wantedOn: string | null;
  readonly today: string;
  /** Work is being worked out. */
  readonly isWaiting: boolean;
  /** Whether it takes time of the bench at all, or is over, on hold or delivered. */
  readonly isOnBench: boolean;
  readonly isHeld: boolean;
  /** How many jobs it names. */
  readonly jobs: number;
  /** Approval and deposit are there, or were passed: nothing waits for them any more. */
  readonly isReleased: boolean;
}

/** @returns how long it takes and when it is done, in one line. */
export function benchAnswer(
  { calendar, own, planned, isWaiting, isOnBench, isHeld, jobs, today }: SeenOnBench,
  locale: string,
): AnswerWords {
  if (own === null) {
    if (isHeld) return { key: 'On hold,', after: ' so nothing of it is planned' };
    if (!isOnBench) return { key: 'Nothing left to do', after: ' at the bench' };
    if (jobs === 0) return { key: 'No job yet,', after: ' so nothing can be planned' };
    return isWaiting
      ? { key: 'Being worked out' }
      : { key: 'Not known:', after: ' no job of it can be reckoned; look for a stop in it' };
  }
  if (calendar === null)
    return { key: 'No day is known:', after: ' say in the workshop when the bench is free' };
  switch (planned?.kind) {
    case 'planned': {
      const minutes = planMinutes(planned.plan);
      if (minutes === 0) return { key: 'Nothing left to do', after: ' at the bench' };
      return {
        key: `${minutesWords(minutes, locale)},`,
        after: ` done by ${wantedDayWords(planned.plan.lastDay, today, locale)}`,
      };
    }
    case 'noBlock':
      return {
        key: 'No block is long enough',
        after: ` for ${minutesWords(planned.neededMinutes, locale)} at the hot press`,
      };
    case 'never':
      return { key: 'No end', after: ' within the two years that are planned' };
    default:
      return { key: 'Being worked out' };
  }
}

const slowestWords: Readonly<Record<Pace['bottleneck'], string>> = {
  printer: 'The printer sets',
  press: 'The press sets',
  hands: 'Your hands set',
};

interface BenchLine {
  readonly words: string;
  readonly isCaution: boolean;
}

/**
 * @param unknown names of jobs that are left out
 * @param quoted names of jobs that take what their quote reckoned with
 * @returns what follows from it: the last days, heatings-up, a day that cannot be kept
 */
export function benchLines(
  { planned, latest, wantedOn, today, own, isReleased, pace }: SeenOnBench,
  { unknown, quoted }: Readonly<Record<'unknown' | 'quoted', readonly string[]>>,
  locale: string,
  formatter: Formatter,
): readonly BenchLine[] {
  const line = (words: string): BenchLine => ({ words, isCaution: false });
  const caution = (words: string): BenchLine => ({ words, isCaution: true });
  const by = (day: string) => `${shortDay(day, today, locale)}, ${dueWords(day, today, formatter)}`;
  const lines: BenchLine[] = [];
  if (own !== null && wantedOn === null) lines.push(line('No day is agreed, so it comes last on the bench.'));
  if (planned?.kind === 'planned') {
    const { ready, extra } = planned.plan;
    if (wantedOn !== null && ready > wantedOn)
      lines.push(
        caution(
          `${shortDay(wantedOn, today, locale)} cannot be kept, with a working day to spare. The first day you can promise is ${wantedDayWords(ready, today, locale)}.`,
        ),
      );
    else if (wantedOn === null)
      lines.push(line(`The first day you can promise is ${wantedDayWords(ready, today, locale)}.`));
    if (extra.sessions > 0)
      lines.push(
        caution(
          `The press is heated up ${formatter.count(extra.sessions, 'time')} more than the price counts: ${minutesWords(extra.minutes, locale)} and ${formatter.number(extra.inkMl, 1)} mL of ink that nobody pays. A longer block would save it.`,
        ),
      );
  }
  if (planned?.kind === 'noBlock')
    lines.push(
      caution(
        `The longest block has ${minutesWords(planned.longestMinutes, locale)}. Make one longer in the workshop, or fewer prints a piece.`,
      ),
    );
  if (latest?.kind === 'latest') {
    const { orderBlanksBy, approveBy, printBy } = latest.dates;
    const last = [
      ...(orderBlanksBy === null ? [] : [{ what: 'Order the blanks by', day: orderBlanksBy }]),
      ...(isReleased ? [] : [{ what: 'Approval and deposit by', day: approveBy }]),
      ...(printBy === null ? [] : [{ what: 'Print by', day: printBy }]),
    ];
    lines.push(...last.map(({ what, day }) => ({ words: `${what} ${by(day)}.`, isCaution: day < today })));
  }
  if (pace !== null && unknown.length + quoted.length === 0)
    lines.push(
      line(
        `${slowestWords[pace.bottleneck]} the pace: ${minutesWords(pace.each[pace.bottleneck], locale)} a piece.`,
      ),
    );
  const list = (names: readonly string[]) => new Intl.ListFormat('en').format(names);
  if (quoted.length > 0)
    lines.push(
      caution(
        `Counted as it was quoted, for it cannot be reckoned now: ${list(quoted)}. Open the job; a stop may stand in it.`,
      ),
    );
  if (unknown.length > 0)
    lines.push(
      caution(
        `Left out, for what it takes is not known: ${list(unknown)}. Open the job; a stop may stand in it.`,
      ),
    );
  return lines;
}

/** What a bar of a day says to whoever cannot see it. */
export function benchDayWords(
  {
    day,
    free,
    own,
    others,
    isWanted,
  }: {
    readonly day: string;
    readonly free: number;
    readonly own: number;
    readonly others: number;
    readonly isWanted: boolean;
  },
  today: string,
  locale: string,
): string {
  const parts = [
    `${minutesWords(free, locale)} free`,
    ...(own > 0 ? [`${minutesWords(own, locale)} for this order`] : []),
    ...(others > 0 ? [`${minutesWords(others, locale)} for others`] : []),
    ...(isWanted ? ['due'] : []),
  ];
  return `${shortDay(day, today, locale)}: ${parts.join(', ')}`;
}
