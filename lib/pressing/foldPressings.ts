import type { LaidOut } from '@/lib/job/spareStacks';
import { grouped } from '@/shared/grouped';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { PressFault } from '@/shared/tables/faults';
import { type BlanksOfSize, blanksLying, type UsedBlanks } from './blanksLying';
import { type FaultyOfSize, faultyBlanks } from './faultyBlanks';
import { type BlankFaultEntry, inPressOrder, type PressedEntry } from './pressedEntry';
import { type PressTurn, pressTurns, turnKey } from './pressTurns';

/** One size at one press. Pieces. */
export interface PressedSize {
  readonly size: string;
  readonly wanted: number;
  /** Laid out, spares among them. */
  readonly take: number;
  readonly good: number;
  readonly seconds: number;
  readonly scrap: number;
  readonly scrapByFault: ReadonlyMap<PressFault | null, number>;
  /** To come good out of this press: what is wanted, and what later presses lost. */
  readonly needed: number;
  /** Still to come good out of this press, so that enough come out of the last. */
  readonly toGo: number;
  /** Lost of the size of this line, whichever press lost them. */
  readonly sparesTaken: number;
  /** Blanks that were laid out beyond what all lines want that are made of them, and those that are left. */
  readonly spares: number;
  /** Below 0 so many of what all these lines want cannot be made. */
  readonly sparesLeft: number;
  /** Several lines are made of the blank and share its spares. */
  readonly isShared: boolean;
  /** Of what is to go in this line so many have no blank. */
  readonly short: number;
  /** Pressed here beyond what was laid out, or beyond what came out of the press before; 0 where it adds up. */
  readonly moreThanCame: number;
  /** Blanks that lay there for it, or pieces that came out of the press before. */
  readonly came: number;
  /** Of those to go, as many of those that came as are not pressed yet. */
  readonly ready: number;
}

/** One print of one line so far. */
export interface PressedTurn extends PressTurn {
  readonly key: string;
  /** In pressing order. */
  readonly counts: readonly PressedSize[];
  readonly wanted: number;
  readonly good: number;
  readonly seconds: number;
  readonly scrap: number;
  readonly toGo: number;
  /** Of them as many as lie before the press. */
  readonly ready: number;
  /** Nothing is left to press here: enough are good, or all that came were pressed. What came unlogged is not waited for. */
  readonly isThrough: boolean;
  /** Minutes of hands and press until it is done, presses that spoil the piece among them as the standard has them. */
  readonly minutesToGo: number;
  /** In the order in which they were lifted. */
  readonly pressed: readonly PressedEntry[];
  readonly next: string | null;
  /** The size after that one; null where none follows. */
  readonly afterNext: string | null;
}

/** A run at the press. */
export interface PressedRun {
  readonly turns: readonly PressedTurn[];
  /** The first with something to press; null once nothing is left that can be pressed. */
  readonly current: PressedTurn | null;
  /** In the order in which they were lifted. */
  readonly pressed: readonly PressedEntry[];
  /** Pieces of a job, print or size that the standard does not name: kept, and counted nowhere. */
  readonly outside: readonly PressedEntry[];
  /** Faulty blanks of a kind or size that the standard does not name. */
  readonly faultyOutside: readonly BlankFaultEntry[];
  /** Lost or seconds, and nobody has said why. */
  readonly withoutCause: readonly PressedEntry[];
  /** Who logged, each once; more than one is told. */
  readonly devices: readonly string[];
}

/**
 * What the pieces of a run come to: by print and size, against what its standard wants. The same whatever order the
 * entries come in, and from how many devices.
 *
 * @param pressings in force and of this run
 * @param blankFaults in force and of this run
 */
export function foldPressings(
  standard: Pick<RunStandard, 'works' | 'sizes' | 'clock'>,
  pressings: readonly PressedEntry[],
  blankFaults: readonly BlankFaultEntry[],
): PressedRun {
  const pressed = inPressOrder(pressings);
  const plan = pressTurns(standard);
  const byTurn = grouped(pressed, ({ body }) => turnKey(body));
  const known = new Set(plan.flatMap((turn) => turn.sizes.map((size) => `${turnKey(turn)} ${size}`)));
  const isInside = ({ body }: PressedEntry) => known.has(`${turnKey(body)} ${body.size}`);
  const { faulty, outside } = faultyBlanks(standard, blankFaults, pressed);
  const blanks = blanksLying(standard, (of) => usedOf(of, plan, byTurn, faulty));
  const turns = plan.map((turn) => turnSoFar(turn, plan, byTurn, blanks));
  return {
    turns,
    current: turns.find(({ ready }) => ready > 0) ?? null,
    pressed,
    outside: pressed.filter((entry) => !isInside(entry)),
    faultyOutside: outside,
    withoutCause: pressed.filter(({ body }) => body.result !== 'good' && body.fault === null),
    devices: [...new Set([...pressed, ...blankFaults].map(({ device }) => device))].sort(),
  };
}

// Helpers

type ByTurn = ReadonlyMap<string, readonly PressedEntry[]>;

function turnSoFar(
  turn: PressTurn,
  plan: readonly PressTurn[],
  byTurn: ByTurn,
  blanks: ReturnType<typeof blanksLying>,
): PressedTurn {
  const ofLine = printsOf(turn, plan);
  const counts = turn.sizes.flatMap((size): readonly PressedSize[] => {
    const lying = blanks({ ...turn, size });
    if (lying === undefined) return [];
    const presses = ofLine.map((one) => tallyOf(one, size, byTurn));
    return [sizeSoFar(lying, presses, turn.slot)];
  });
  const pressed = (byTurn.get(turnKey(turn)) ?? []).filter(({ body }) => turn.sizes.includes(body.size));
  const all = (of: 'wanted' | 'good' | 'seconds' | 'scrap' | 'toGo' | 'ready' | 'came' | 'moreThanCame') =>
    counts.reduce((sum, one) => sum + one[of], 0);
  const open = counts.filter(({ toGo }) => toGo > 0).map(({ size }) => size);
  const { handMinutes, aloneMinutes, scrap } = turn.placement;
  const each = (handMinutes + aloneMinutes) / Math.max(1 - scrap, 0.1);
  return {
    ...turn,
    ...{ key: turnKey(turn), counts, pressed },
    ...{ wanted: all('wanted'), good: all('good'), seconds: all('seconds'), scrap: all('scrap') },
    ...{ toGo: all('toGo'), ready: all('ready') },
    isThrough:
      all('toGo') === 0 ||
      (all('ready') === 0 && (all('came') > 0 || turn.slot === 0) && all('moreThanCame') === 0),
    ...{ minutesToGo: all('toGo') * each },
    ...{ next: open[0] ?? null, afterNext: open[1] ?? null },
  };
}

interface Tally {
  readonly isLast: boolean;
  readonly good: number;
  readonly seconds: number;
  readonly scrap: number;
  readonly scrapByFault: ReadonlyMap<PressFault | null, number>;
}

function tallyOf(turn: PressTurn, size: string, byTurn: ByTurn): Tally {
  const own = (byTurn.get(turnKey(turn)) ?? []).filter(({ body }) => body.size === size);
  const many = (result: string) => own.filter(({ body }) => body.result === result).length;
  const scrapByFault = new Map<PressFault | null, number>();
  for (const { body } of own) {
    if (body.result === 'scrap') scrapByFault.set(body.fault, (scrapByFault.get(body.fault) ?? 0) + 1);
  }
  const { isLast } = turn;
  return { isLast, good: many('good'), seconds: many('second'), scrap: many('scrap'), scrapByFault };
}

/** A second of an earlier press goes on; one of the last is set aside, and what was wanted takes a spare. */
const lostIn = ({ isLast, scrap, seconds }: Tally): number => scrap + (isLast ? seconds : 0);
const throughOf = ({ isLast, good, seconds }: Tally): number => good + (isLast ? 0 : seconds);

/** What became of the blanks of a size of a line: those that were faulty, pressed, and are still to be taken. */
function usedOf(
  of: Pick<LaidOut, 'jobId' | 'lineId' | 'size' | 'wanted'>,
  plan: readonly PressTurn[],
  byTurn: ByTurn,
  faulty: FaultyOfSize,
): UsedBlanks {
  const presses = printsOf(of, plan).map((one) => tallyOf(one, of.size, byTurn));
  const [first = NOTHING] = presses;
  const lostLater = sum(presses.slice(1).map(lostIn));
  return {
    faulty: faulty(of, of.size),
    entered: first.good + first.seconds + first.scrap,
    toEnter: Math.max(0, of.wanted + lostLater - throughOf(first)),
    lost: sum(presses.map(lostIn)),
  };
}

const printsOf = (
  { jobId, lineId }: Pick<PressTurn, 'jobId' | 'lineId'>,
  plan: readonly PressTurn[],
): readonly PressTurn[] =>
  plan
    .filter((turn) => turn.jobId === jobId && turn.lineId === lineId)
    .toSorted((one, other) => one.slot - other.slot);

function sizeSoFar(lying: BlanksOfSize, presses: readonly Tally[], slot: number): PressedSize {
  const { size, wanted, take, spares, sparesLeft, isShared } = lying;
  const lostLater = sum(presses.slice(slot + 1).map(lostIn));
  const here = presses[slot] ?? NOTHING;
  const before = presses[slot - 1];
  const came = before === undefined ? lying.came : throughOf(before);
  const pressed = here.good + here.seconds + here.scrap;
  const toGo = Math.max(0, wanted + lostLater - throughOf(here));
  return {
    ...{ size, wanted, take, spares, sparesLeft, isShared, sparesTaken: lying.lost },
    ...{ good: here.good, seconds: here.seconds, scrap: here.scrap, scrapByFault: here.scrapByFault },
    needed: wanted + lostLater,
    toGo,
    came,
    short: Math.min(toGo, lying.short),
    moreThanCame: Math.max(0, pressed - came),
    ready: Math.min(toGo, Math.max(0, came - pressed)),
  };
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

const NOTHING: Tally = { isLast: false, good: 0, seconds: 0, scrap: 0, scrapByFault: new Map() };
