import { grouped } from '@/shared/grouped';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { PressFault } from '@/shared/tables/faults';
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
  /** Of the size, whichever press lost them; below 0 so many of what is wanted cannot be made. */
  readonly sparesTaken: number;
  readonly sparesLeft: number;
  /** Pressed here beyond what was laid out, or beyond what came out of the press before; 0 where it adds up. */
  readonly moreThanCame: number;
  /** Blanks laid out, or pieces that came out of the press before. */
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
  const turns = plan.map((turn) => turnSoFar(turn, plan, standard, byTurn, faulty));
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
  standard: Pick<RunStandard, 'works'>,
  byTurn: ByTurn,
  faulty: FaultyOfSize,
): PressedTurn {
  const ofLine = plan
    .filter(({ jobId, lineId }) => jobId === turn.jobId && lineId === turn.lineId)
    .toSorted((one, other) => one.slot - other.slot);
  const line = standard.works
    .find(({ jobId }) => jobId === turn.jobId)
    ?.lines.find(({ lineId }) => lineId === turn.lineId);
  const counts = turn.sizes.map((size): PressedSize => {
    const { wanted = 0, take = 0 } = line?.sizes.find((one) => one.size === size) ?? {};
    const presses = ofLine.map((one) => tallyOf(one, size, byTurn));
    return sizeSoFar({ size, wanted, take }, presses, turn.slot, faulty(turn, size));
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
    isThrough: all('toGo') === 0 || (all('ready') === 0 && all('came') > 0 && all('moreThanCame') === 0),
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

function sizeSoFar(
  { size, wanted, take }: Pick<PressedSize, 'size' | 'wanted' | 'take'>,
  presses: readonly Tally[],
  slot: number,
  faulty: number,
): PressedSize {
  const lost = presses.reduce((sum, one) => sum + lostIn(one), faulty);
  const lostLater = presses.slice(slot + 1).reduce((sum, one) => sum + lostIn(one), 0);
  const here = presses[slot] ?? NOTHING;
  const before = presses[slot - 1];
  const came = before === undefined ? take - faulty : throughOf(before);
  const pressed = here.good + here.seconds + here.scrap;
  const toGo = Math.max(0, wanted + lostLater - throughOf(here));
  return {
    ...{ size, wanted, take, sparesTaken: lost, sparesLeft: take - wanted - lost },
    ...{ good: here.good, seconds: here.seconds, scrap: here.scrap, scrapByFault: here.scrapByFault },
    needed: wanted + lostLater,
    toGo,
    came,
    moreThanCame: Math.max(0, pressed - came),
    ready: Math.min(toGo, Math.max(0, came - pressed)),
  };
}

const NOTHING: Tally = { isLast: false, good: 0, seconds: 0, scrap: 0, scrapByFault: new Map() };
