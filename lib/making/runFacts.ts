import { grouped } from '@/shared/grouped';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { PressTest } from '@/shared/schemas/making/pressLog';
import type { Run } from '@/shared/schemas/making/run';
import type {
  BlankFault,
  Hours,
  Pressing,
  RunActual,
  RunStep,
  SheetsPrinted,
} from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** Bodies of what is noted of a run, by kind of entry. */
interface RunBodies {
  readonly pressing: Pressing;
  readonly sheetsPrinted: SheetsPrinted;
  readonly blankFault: BlankFault;
  readonly runStep: RunStep;
  readonly runActual: RunActual;
  readonly hours: Hours;
  readonly pressTest: PressTest;
}

/** What was noted, with who noted it and when. */
type RunNote<Kind extends keyof RunBodies> = Entry<Kind, RunBodies[Kind]>;

/** A note of any kind that a run is told by. */
export type AnyRunNote = { [Kind in keyof RunBodies]: RunNote<Kind> }[keyof RunBodies];

/** A standard that was frozen, withdrawn ones among them. */
export type StandardPaper = Pick<Paper<'runStandard', RunStandard>, 'id' | 'device' | 'at' | 'body'> & {
  readonly withdrawn: boolean;
};

/** All that one run is told by. Notes of several devices stand together, each once, in the one order of all. */
export interface RunFacts {
  readonly runId: string;
  readonly run: Run;
  /** The newest that was not withdrawn; null where the run has not begun by one. */
  readonly standard: StandardPaper | null;
  /** Others in force beside it: two devices each began the run. Theirs count for nothing, their notes do. */
  readonly otherStandards: readonly StandardPaper[];
  readonly pressings: readonly RunNote<'pressing'>[];
  readonly sheetsPrinted: readonly RunNote<'sheetsPrinted'>[];
  readonly blankFaults: readonly RunNote<'blankFault'>[];
  readonly steps: readonly RunNote<'runStep'>[];
  readonly actuals: readonly RunNote<'runActual'>[];
  readonly hours: readonly RunNote<'hours'>[];
  readonly tests: readonly RunNote<'pressTest'>[];
  readonly isBegun: boolean;
  readonly isClosed: boolean;
  /** Devices that noted something of it, in the order in which each began to. */
  readonly devices: readonly string[];
}

/**
 * What is known of one run.
 *
 * @param notes entries in force of any run, in the store's one order; one that comes twice counts once
 * @param standards papers in the store's one order
 */
export function runFacts(
  runId: string,
  run: Run,
  notes: readonly AnyRunNote[],
  standards: readonly StandardPaper[],
): RunFacts {
  const own = onceEach(notes).filter((note) => runOf(note) === runId);
  const inForce = standards.filter(({ withdrawn, body }) => !withdrawn && body.runId === runId);
  const standard = inForce.at(-1) ?? null;
  const steps = own.filter((note) => note.kind === 'runStep');
  const pressings = own.filter((note) => note.kind === 'pressing');
  return {
    runId,
    run,
    standard,
    otherStandards: inForce.filter((paper) => paper !== standard),
    pressings,
    sheetsPrinted: own.filter((note) => note.kind === 'sheetsPrinted'),
    blankFaults: own.filter((note) => note.kind === 'blankFault'),
    steps,
    actuals: own.filter((note) => note.kind === 'runActual'),
    hours: own.filter((note) => note.kind === 'hours'),
    tests: own.filter((note) => note.kind === 'pressTest'),
    isBegun:
      standard !== null || pressings.length > 0 || steps.some(({ body }) => body.step.what === 'begun'),
    isClosed: isClosedBy(steps),
    devices: [...new Set(own.map(({ device }) => device))],
  };
}

/**
 * What is known of every run: the notes are parted once, not looked through again for each.
 *
 * @param runs by id
 * @param notes entries in force of any run, in the store's one order
 * @param standards papers in the store's one order
 */
export function factsOfRuns(
  runs: Readonly<Record<string, Run>>,
  notes: readonly AnyRunNote[],
  standards: readonly StandardPaper[],
): readonly RunFacts[] {
  const notesOf = grouped(notes, (note) => runOf(note) ?? '');
  const standardsOf = grouped(standards, ({ body }) => body.runId);
  return Object.entries(runs).map(([id, run]) =>
    runFacts(id, run, notesOf.get(id) ?? [], standardsOf.get(id) ?? []),
  );
}

/** @param steps of one run, in force, in the store's one order */
export function isClosedBy(steps: readonly { readonly body: Pick<RunStep, 'step'> }[]): boolean {
  const last = steps.findLast(({ body: { step } }) => step.what === 'closed' || step.what === 'reopened');
  return last?.body.step.what === 'closed';
}

// Helpers

function runOf(note: AnyRunNote): string | null {
  if (note.kind !== 'hours') return note.body.runId;
  return note.body.for.kind === 'run' ? note.body.for.id : null;
}

const onceEach = (notes: readonly AnyRunNote[]): readonly AnyRunNote[] => [
  ...new Map(notes.map((note) => [note.id, note])).values(),
];
