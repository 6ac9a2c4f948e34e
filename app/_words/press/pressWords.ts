import type { PressedSize, PressedTurn } from '@/lib/pressing/foldPressings';
import type { PressMoment, PressPhase } from '@/lib/pressing/pressPhase';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { PressFault } from '@/shared/tables/faults';
import { faultNames } from './faultWords';
import { ordinal } from './ordinal';

export const pressPhaseWords: Readonly<Record<PressPhase, string>> = {
  heat: 'heat',
  press: 'press',
  cool: 'cool',
  lift: 'lift',
};

export const notBegunWords = {
  title: 'Not begun yet',
  line: 'The press goes by what a run was begun with: sizes, blanks laid out, recipes. Begin the run first.',
  link: 'To the run',
} as const;

export const pressWakeWords = {
  asking: '',
  awake: 'The screen stays awake while this is open.',
  refused:
    'The phone did not let the screen stay awake, as with a low battery. It is asked again when you come back; until then it may go dark.',
  unknown:
    'This browser cannot keep the screen awake: set a longer time until it goes dark in the settings of the phone.',
} as const;

/** @returns whole s as a clock shows them: “0:38” */
export const countDown = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;

/** @returns what the press does, beside the size */
export function inPressWords({ phase, isOver }: PressMoment): string {
  if (phase === 'heat') return isOver ? 'dry: lay the print on' : 'being heated dry';
  if (phase === 'press') return 'in the press';
  return phase === 'cool' ? 'cooling in place' : 'lift it straight';
}

/** @returns “6th of 11” */
export const placeWords = (place: number, needed: number): string => `${ordinal(place)} of ${needed}`;

/** @returns “Next: L, then XL” */
export function nextWords([next, after]: readonly string[], current: string | null): string {
  if (next === undefined)
    return current === null ? 'Nothing left to press here' : 'Next: none, this is the last';
  return after === undefined ? `Next: ${next}` : `Next: ${next}, then ${after}`;
}

/** @returns “1 so far, ghost” */
export function scrapSoFar({ scrap, pressed }: Pick<PressedTurn, 'scrap' | 'pressed'>): string {
  const last = pressed.findLast(({ body }) => body.result === 'scrap')?.body.fault ?? null;
  if (scrap === 0) return 'none so far';
  return last === null ? `${scrap} so far` : `${scrap} so far, ${faultNames[last].toLowerCase()}`;
}

/** Whose spares are counted, above them. */
export const sparesOfWords = (blank: string | null): string =>
  blank === null
    ? 'spares left, in pressing order'
    : `spares left of ${blank}, all designs, in pressing order`;

/** @returns what is left of a size whose spares are gone; null where some are left or nothing is to do */
export function noSpareWords({
  size,
  toGo,
  sparesLeft,
  short,
}: Pick<PressedSize, 'size' | 'toGo' | 'sparesLeft' | 'short'>): string | null {
  if (toGo === 0 || sparesLeft > 0) return null;
  return short > 0
    ? `${size}: ${short} cannot be made, no blank is left.`
    : `${size} has no spare left; ${toGo} still to be good.`;
}

const resultWords: Readonly<Record<Pressing['result'], string>> = {
  good: 'good',
  second: 'second',
  scrap: 'scrap',
};

/** @returns what was tapped: “L, scrap, ghost” */
export const tappedWords = ({ size, result, fault }: Pick<Pressing, 'size' | 'result' | 'fault'>): string =>
  [size, resultWords[result], ...(fault === null ? [] : [faultNames[fault].toLowerCase()])].join(', ');

export const twiceHead = (fault: PressFault): string => `${faultNames[fault]}, twice running: stop`;
export const twiceThen = 'Press one, look, go on.';

export const alarmHeads = {
  look: 'Look closely at the next ones',
  stop: 'Stop and find the cause',
  unproven: 'The recipe counts as unproven',
} as const;

/** Whether what was tapped lies on the device. */
export const pressKeptWords = (at: string): string => `no signal needed · kept ${at}`;
export const pressKeepingWords = 'no signal needed · keeping…';
export const pressNotKeptWords =
  'The last taps are on this screen only. Leave it open, make room, and try again.';

export const moreThanCameWords = (print: string, size: string, more: number): string =>
  `${print}, ${size}: ${more} more pressed than were there. They are kept; undo what was tapped twice, or count the blanks.`;
export const outsideWords = (pieces: number): string =>
  `${pieces} pressed of a size or print that this run was not begun with: kept, and counted nowhere here.`;
export const faultyOutsideWords = (entries: number): string =>
  `${entries} notes of faulty blanks of another kind or size: kept, and no spare is taken for them.`;
export const withoutCauseWords = (pieces: number): string =>
  pieces === 1 ? 'One was lost and nobody said why.' : `${pieces} were lost and nobody said why.`;
export const sayWhy = 'Say why';
export const everyCauseNamed = 'Every one has its cause.';
export const devicesWords = (devices: number): string =>
  `${devices} devices log this run; what both tapped of the same piece counts twice.`;
export const lookCloselyWords = (pressed: number): string =>
  pressed === 1
    ? 'The first is out: look at it closely, front, back and edges, before the next.'
    : 'Three are out: lay them side by side and look closely, then run.';

/**
 * @param chance of it although nothing is wrong, above 0
 * @returns “About 1 in 32 runs does this by bad luck.”
 */
export function byLuckWords(what: 'runs' | 'blocks', chance: number): string {
  const one = Math.round(1 / chance);
  if (one < 2) return `Most ${what} do this by bad luck alone.`;
  return one > RARE
    ? 'Bad luck alone hardly ever does this.'
    : `About 1 in ${one} ${what} does this by bad luck.`;
}

/** Rarer than 1 in so many, a figure says no more than *hardly ever*. */
const RARE = 1000;

export const otherCause = 'Other cause';

export const severalBegan =
  'Two devices each began this run. This press goes by the newest; what each noted counts as well.';

/** @param at the time at which the print that is up will be done; null once it is */
export const pressDoneWords = (isAllDone: boolean, at: string | null): string =>
  isAllDone ? 'all prints are done' : at === null ? 'this print is done' : `done about ${at}`;
