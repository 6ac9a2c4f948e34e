import { styleOf } from '@/app/_docket/jobSheet/benchBody';
import { packStep, plain, pressOf, printStep, wayOf } from '@/app/_docket/jobSheet/benchSteps';
import { sharedTally, stackOf } from '@/app/_docket/jobSheet/sharedSpares';
import { watchNotes } from '@/app/_docket/jobSheet/watchNotes';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { runSheetTable } from '@/app/_words/making/sheet/runSheetTable';
import { beginWords, timesWords } from '@/app/_words/making/sheet/timesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { RunSheetFacts } from '@/lib/making/sheet/runSheetFacts';
import type { JobPress, JobSheetBody, JobStep } from '@/lib/papers/bodies/jobSheetPaper';
import { apart } from '@/lib/papers/words/labelsFor';
import type { Finding } from '@/shared/finding';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import type { Workshop } from '@/shared/schemas/workshop';

interface RunSheetTold {
  readonly name: string;
  readonly workshop: Workshop;
  readonly facts: RunSheetFacts;
  /** Of all jobs. */
  readonly findings: readonly Finding[];
  /** Names of jobs that changed since the run began; the sheet goes by what was frozen. */
  readonly changed: readonly string[];
  /** Names of jobs it was begun with that cannot be drawn: not here any more, or without sums. */
  readonly missing: readonly string[];
  /** Orders and stall days it is made for. */
  readonly madeFor: readonly string[];
  /** YYYY-MM-DD; null where nobody waits. */
  readonly wantedOn: string | null;
  readonly today: string;
  readonly page: JobSheetBody['page'];
  readonly context: TextContext;
}

/** More tests than this are not ticked one by one. */
const MOST_TESTS = 4;
/** Of more prints than this each is told in fewer words, so that all find room. */
const FEW = 2;

/** What lies beside the press while a run is made, in the order of the work; no cost stands on it. */
export function runBody(told: RunSheetTold): JobSheetBody {
  const { facts, workshop, context, findings } = told;
  const locale = usableLocale(context.locale);
  const { clock } = facts;
  const parts = (...what: readonly ClockPart['what'][]) => clock.filter((part) => what.includes(part.what));
  return {
    ...styleOf({ workshop }),
    page: told.page,
    locale: workshop.locale,
    of: 'run',
    job: told.name,
    pieces: facts.pieces,
    facts: [
      ...(told.madeFor.length === 0 ? [] : [{ name: jobSheetTable.for, value: listed(told.madeFor) }]),
      {
        name: jobSheetTable.wanted,
        value:
          told.wantedOn === null
            ? jobSheetTable.noDay
            : wantedDayWords(told.wantedOn, told.today, workshop.locale),
      },
    ],
    before: [
      ...printSteps(told, printTimes(parts('print'), parts('dry'), locale)),
      stacksStep(told),
      warmUpStep(told, parts('setUp', 'test'), locale),
    ],
    presses: pressBlocks(told, locale),
    after: packSteps(told, timesWords(parts('cool', 'finish', 'pack', 'cleanDown'), locale)),
    watch: [
      runSheetTable.stops,
      ...(told.changed.length === 0 ? [] : [runSheetTable.changed(listed(told.changed))]),
      ...(told.missing.length === 0 ? [] : [runSheetTable.missing(listed(told.missing))]),
      ...watchNotes(findings, context),
    ],
  };
}

// Helpers

function printTimes(print: readonly ClockPart[], dry: readonly ClockPart[], locale: string): string {
  const drying = dry.length === 0 ? '' : runSheetTable.drying(timesWords(dry, locale));
  return [beginWords(print, locale), drying].filter((part) => part !== '').join('; ');
}

/** Each job is printed on its own paper, what is pressed first before the rest. */
function printSteps({ facts, context }: RunSheetTold, times: string): readonly JobStep[] {
  const pressed = facts.presses.map(({ jobId }) => jobId);
  const place = ({ job }: RunSheetFacts['jobs'][number]) =>
    pressed.includes(job.work.jobId) ? pressed.indexOf(job.work.jobId) : pressed.length;
  const inTurn = facts.jobs.toSorted((one, other) => place(one) - place(other));
  return inTurn.map(({ job, facts: own }, at) => {
    const step = printStep(job.input, { facts: own, context, isTimed: times !== '' });
    const heading =
      facts.jobs.length === 1 ? step.heading : runSheetTable.of(step.heading, apart(job.input.job.name));
    const aside = [at === 0 ? times : '', step.aside].filter((part) => part !== '').join('; ');
    return { ...step, heading, aside };
  });
}

/** A stack a size, in the order in which they go to the press. */
function stacksStep({ facts, context }: RunSheetTold): JobStep {
  const formatter = formatterFor(context);
  const { number, count } = formatter;
  const { stacks, take, pieces, shared } = facts;
  const lines = new Set(stacks.map(({ jobId, lineId }) => `${jobId} ${lineId}`));
  return {
    ...plain,
    heading: runSheetTable.layOut,
    aside: runSheetTable.laidOut(number(take), count(take - pieces, 'spare')),
    ticks: stacks.map((stack, at) => {
      const before = stacks[at - 1];
      const isNext = before?.jobId !== stack.jobId || before.lineId !== stack.lineId;
      const size = `${apart(stack.size)} ${number(stackOf(stack))}`;
      const words = lines.size > 1 && isNext ? runSheetTable.of(size, apart(lineName(facts, stack))) : size;
      return stack.spares > 0 ? words : runSheetTable.scarce(words);
    }),
    tally: sharedTally(shared, formatter),
  };
}

function warmUpStep(told: RunSheetTold, parts: readonly ClockPart[], locale: string): JobStep {
  const { facts, workshop } = told;
  const way = oneWay(told);
  return {
    ...plain,
    heading: jobSheetTable.warmUp,
    aside: [...new Set(parts.map(({ session }) => session))]
      .map((session) => beginWords(inOneGo(parts.filter((part) => part.session === session)), locale))
      .join('; '),
    ticks: [
      jobSheetTable.measured(workshop.units.temperature),
      ...Array.from({ length: Math.min(facts.tests, MOST_TESTS) }, (_, at) => jobSheetTable.test(at + 1)),
      jobSheetTable.firstGood,
    ],
    lines: way === null ? [] : [jobSheetTable.everyPrint(way)],
  };
}

/** Without tests of a later print, which come right before that: with them the first print began before it was warm. */
function inOneGo(parts: readonly ClockPart[]): readonly ClockPart[] {
  const end = parts.findIndex((part, at) => {
    const before = parts[at - 1];
    return before !== undefined && part.fromMinute - before.fromMinute - before.minutes > 1e-6;
  });
  return end < 0 ? parts : parts.slice(0, end);
}

/** How every print is pressed, where that is said once for all. */
function oneWay({ facts, context }: RunSheetTold): string | null {
  const formatter = formatterFor(context);
  const ways = facts.presses.flatMap(({ jobId, of }) => {
    const input = inputOf(facts, jobId);
    return input === undefined ? [] : [wayOf(input, of, formatter)];
  });
  return ways.length > FEW && new Set(ways).size === 1 ? (ways[0] ?? null) : null;
}

function pressBlocks(told: RunSheetTold, locale: string): readonly JobPress[] {
  const { facts, context } = told;
  const formatter = formatterFor(context);
  const isOneWay = oneWay(told) !== null;
  const placements = facts.presses.map(({ of }) => of);
  return facts.presses.flatMap(({ jobId, of, times }): readonly JobPress[] => {
    const input = inputOf(facts, jobId);
    if (input === undefined) return [];
    const press = pressOf(input, of, { formatter, facts: { placements }, isOneWay });
    const when = timesWords(times, locale);
    return [
      {
        ...press,
        heading:
          facts.jobs.length === 1 ? press.heading : runSheetTable.ofJob(press.heading, apart(input.job.name)),
        aside: [when, press.aside].filter((part) => part !== '').join('; '),
      },
    ];
  });
}

/** Each job is packed by its own list; what went wrong is counted once. */
function packSteps({ facts, context }: RunSheetTold, times: string): readonly JobStep[] {
  const { number } = formatterFor(context);
  return facts.jobs.map(({ job, facts: own }, at) => {
    const step = packStep(job.input, number(own.pieces));
    const isLast = at === facts.jobs.length - 1;
    return {
      ...step,
      heading:
        facts.jobs.length === 1 ? step.heading : runSheetTable.of(step.heading, apart(job.input.job.name)),
      aside: at === 0 ? times : '',
      tally: isLast ? step.tally : plain.tally,
    };
  });
}

const inputOf = ({ jobs }: RunSheetFacts, jobId: string) =>
  jobs.find(({ job }) => job.work.jobId === jobId)?.job.input;

function lineName(facts: RunSheetFacts, { jobId, lineId }: RunSheetFacts['stacks'][number]): string {
  const name = inputOf(facts, jobId)?.job.lines.find(({ id }) => id === lineId)?.name ?? '';
  return facts.jobs.length === 1 ? name : `${inputOf(facts, jobId)?.job.name ?? ''}, ${name}`;
}
