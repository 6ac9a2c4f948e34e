import { standardFor } from '@/lib/making/standard/standardFor';
import type { Hours, Pressing, WorkElement } from '@/shared/schemas/making/runEvents';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import { goodMade } from './goodMade';
import type { SharedTime } from './sharedHours';

/** Minutes of one element of work; `actual` null where nobody noted any. */
export interface ElementTime {
  readonly element: string;
  readonly standard: number;
  /** Of works of which it was not noted, as planned. */
  readonly actual: number | null;
}

/** What a run took of time. */
export interface RunTime {
  readonly elements: readonly ElementTime[];
  /** All of it: what was noted, and as planned what nobody noted. */
  readonly minutes: number;
  /** Of them those that nobody noted. */
  readonly plannedMinutes: number;
  /** Of those again what is done on a stall day itself, which its close tells. */
  readonly onTheDayMinutes: number;
  readonly isNoted: boolean;
}

/** What tells the time of a run. */
export interface TimeNoted {
  readonly standard: RunStandard;
  /** In force, of the run. */
  readonly pressings: readonly Pressing[];
  /** Noted for the run itself. */
  readonly hours: readonly Hours[];
  /** Its parts of what was noted for its orders and stall days. */
  readonly shared: readonly Omit<SharedTime, 'runId'>[];
}

/**
 * The one figure of a run's time, for its bridge and for the year. Work that nobody noted, of the run or of the order it
 * is for, is as planned for the pieces that came, unless somebody noted all the rest in one.
 */
export function runTime({ standard, pressings, hours, shared }: TimeNoted): RunTime {
  const made = goodMade(standard, pressings);
  const { works } = made === null ? standard : standardFor(standard, made);
  const noted = new Map<string, number>();
  for (const { element, minutes } of [...hours, ...shared])
    noted.set(element, (noted.get(element) ?? 0) + minutes);
  const planned = works.flatMap((work) => {
    const told = new Set<string>([...hours, ...shared.filter(isFor(work))].map(({ element }) => element));
    return elementsOf(work).map((one) => ({
      ...{ ...one, isOnTheDay: work.stallDayId !== null && onTheDay.has(one.element) },
      isTold: told.has(REST) || told.has(one.element) || (one.element === UNPARTED && told.size > 0),
    }));
  });
  const open = planned.filter(({ isTold }) => !isTold);
  const plannedMinutes = sum(open);
  return {
    elements: [...new Set([...planned.map(({ element }) => element), ...noted.keys()])].map((element) => {
      const of = (all: typeof planned) => sum(all.filter((one) => one.element === element));
      const found = noted.get(element);
      return { element, standard: of(planned), actual: found === undefined ? null : found + of(open) };
    }),
    minutes: sum([...hours, ...shared]) + plannedMinutes,
    plannedMinutes,
    onTheDayMinutes: sum(open.filter(({ isOnTheDay }) => isOnTheDay)),
    isNoted: noted.size > 0,
  };
}

// Helpers

/** All the rest of a run's time, noted in one. */
const REST: WorkElement = 'rest';

/** Minutes of a standard that parts them by no element. */
const UNPARTED: WorkElement = 'other';

const onTheDay: ReadonlySet<string> = new Set<WorkElement>(['selling', 'deliver']);

const elementsOf = ({ labour }: StandardWork): StandardWork['labour']['elements'] =>
  labour.elements.length > 0 || labour.minutes === 0
    ? labour.elements
    : [{ element: UNPARTED, minutes: labour.minutes }];

const isFor =
  ({ orderId, stallDayId }: StandardWork) =>
  ({ of }: Pick<SharedTime, 'of'>): boolean =>
    of.id === (of.kind === 'order' ? orderId : stallDayId);

const sum = (rows: readonly { readonly minutes: number }[]): number =>
  rows.reduce((all, { minutes }) => all + minutes, 0);
