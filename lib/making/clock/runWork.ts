import type { BenchWork, PressWork } from '@/lib/calendar/benchWork';
import { benchWorkOf, stagesOf } from '@/lib/costing/benchWorkOf';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import { preTapedShare } from '@/lib/making/pace/pressCycle';
import type { RunJob } from '@/lib/making/runPlan';
import { pressSequence } from '@/lib/making/sequence/pressSequence';
import type { PressTurn } from '@/lib/making/sequence/turns';
import { wantedFirst } from '@/lib/making/sequence/wantedFirst';

/** One print of one line on the clock, at the pace of the press. */
interface TurnWork extends PressTurn {
  readonly testMinutes: number;
  /** All pieces, spoiled ones among them. */
  readonly pressMinutes: number;
}

/** All good pieces of a line. */
interface LineWork {
  readonly jobId: string;
  readonly lineId: string;
  readonly pieces: number;
  /** The most pieces of its job that one session carries; null where it carries all. */
  readonly mostOfJob: number | null;
}

/** Jobs made together, as one work. Minutes of the wall clock, nothing overlapped. */
export interface RunWorkload {
  readonly pieces: number;
  /**
   * Good pieces of each line, in the order in which they fill the heatings-up: those wanted soonest first, so that they are
   * not left for the last; else as lines are pressed first.
   */
  readonly lines: readonly LineWork[];
  readonly turns: readonly TurnWork[];
  readonly setUpMinutes: number;
  readonly cleanDownMinutes: number;
  readonly breakMinutes: number;
  /** Sheets: the hands' minutes, and those the printer runs. */
  readonly feedMinutes: number;
  readonly printerMinutes: number;
  readonly finishMinutes: number;
  readonly packMinutes: number;
  readonly deliverMinutes: number;
  /** Heatings-up by what each job is priced for: of all, and of the one with most. */
  readonly priced: number;
  readonly least: number;
}

/**
 * What a run asks of the bench. Where transfers are taped before, as much of each press as that saves is done with the
 * sheets instead: not a minute is lost, but the press need not be hot for it. It is set up and cleaned once for all jobs of a session; each is as long as the job that
 * asks most has it.
 */
export function runWorkload(jobs: readonly RunJob[], isPreTaped: boolean): RunWorkload {
  const works = jobs.map(({ costed }) => benchWorkOf(costed));
  const presses = works.flatMap(({ press }) => (press === null ? [] : [press]));
  const most = (of: (press: PressWork) => number) => Math.max(0, ...presses.map(of));
  const loose = (when: 'before' | 'after', what: BenchWork['after'][number]['what']) =>
    sum(works.flatMap((work) => work[when].filter((one) => one.what === what).map(({ minutes }) => minutes)));
  const found = jobs.flatMap((job) => turnMinutes(job, isPreTaped));
  const turns = pressSequence(jobs).flatMap((turn): readonly TurnWork[] => {
    const minutes = found.find(({ key }) => key === turnKey(turn));
    return minutes === undefined ? [] : [{ ...turn, ...minutes.times }];
  });
  const lineIds = [
    ...new Map(turns.map(({ jobId, lineId }) => [`${jobId}\n${lineId}`, { jobId, lineId }])).values(),
  ].toSorted((one, other) => wantedOf(jobs, one.jobId) - wantedOf(jobs, other.jobId));
  return {
    pieces: sum(jobs.map(({ costed }) => wholeJob(costed.sheet, 'goodPieces'))),
    lines: lineIds.map((one) => ({
      ...one,
      pieces: piecesOf(jobs, one),
      mostOfJob: mostOf(jobs, one.jobId),
    })),
    turns,
    setUpMinutes: most(({ setUpMinutes }) => setUpMinutes),
    cleanDownMinutes: most(({ cleanDownMinutes }) => cleanDownMinutes),
    breakMinutes: most(({ breakMinutes }) => breakMinutes),
    feedMinutes: loose('before', 'print') + sum(found.map(({ tapedMinutes }) => tapedMinutes)),
    printerMinutes: sum(jobs.map(({ costed }) => stagesOf(costed).printer)),
    finishMinutes: loose('after', 'finish'),
    packMinutes: loose('after', 'pack'),
    deliverMinutes: loose('after', 'deliver'),
    priced: sum(presses.map(({ sessions }) => sessions)),
    least: most(({ sessions }) => sessions),
  };
}

// Helpers

interface TurnMinutes {
  readonly key: string;
  readonly times: Pick<TurnWork, 'testMinutes' | 'pressMinutes'>;
  /** Done at the bench before, min. */
  readonly tapedMinutes: number;
}

/** The job's own minutes at each print, those of its tests apart. */
function turnMinutes({ work, costed }: RunJob, isPreTaped: boolean): readonly TurnMinutes[] {
  const { sheet, laidOut } = costed;
  const runs = benchWorkOf(costed).press?.runs ?? [];
  const slots = laidOut.job.lines.flatMap(({ line, placements }) =>
    placements.map(({ placement }, slot) => ({ lineId: line.id, placement, slot })),
  );
  return slots.map(({ lineId, placement, slot }, index) => {
    const presses = sheet.cases.reduce(
      (count, one, at) =>
        one.lineId === lineId ? count + one.quantity * caseValue(sheet, `presses_${slot + 1}`, at) : count,
      0,
    );
    const all = runs[index]?.minutes ?? 0;
    const minutes = isPreTaped ? all * preTapedShare(placement.recipe) : all;
    const testMinutes = presses > 0 ? (minutes * placement.testPresses) / presses : 0;
    return {
      key: turnKey({ jobId: work.jobId, lineId, placementId: placement.id }),
      times: { testMinutes, pressMinutes: minutes - testMinutes },
      tapedMinutes: all - minutes,
    };
  });
}

const turnKey = ({
  jobId,
  lineId,
  placementId,
}: Pick<PressTurn, 'jobId' | 'lineId' | 'placementId'>): string => `${jobId}\n${lineId}\n${placementId}`;

const piecesOf = (jobs: readonly RunJob[], of: { readonly jobId: string; readonly lineId: string }): number =>
  sum(
    jobs.flatMap(({ work, costed }) =>
      work.jobId === of.jobId
        ? costed.sheet.cases.flatMap(({ lineId, quantity }) => (lineId === of.lineId ? [quantity] : []))
        : [],
    ),
  );

const mostOf = (jobs: readonly RunJob[], jobId: string): number | null =>
  jobs.find(({ work }) => work.jobId === jobId)?.costed.laidOut.job.job.piecesPerSession ?? null;

function wantedOf(jobs: readonly RunJob[], jobId: string): number {
  const job = jobs.find(({ work }) => work.jobId === jobId);
  return job === undefined ? Number.MAX_SAFE_INTEGER : wantedFirst(job);
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
