import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { PressedTurn } from '@/lib/pressing/foldPressings';
import type { PressedSummary } from '@/lib/pressing/pressedSummary';
import type { PressTurn } from '@/lib/pressing/pressTurns';
import { faultNames } from './faultWords';

type Named = Pick<PressTurn, 'jobId' | 'lineId' | 'jobName' | 'lineName' | 'placement'>;

/** @returns a print by its own name; where the run has several lines or jobs, with them. */
export function turnName(turn: Named, turns: readonly Named[]): string {
  const jobs = new Set(turns.map(({ jobId }) => jobId));
  const lines = new Set(turns.filter(({ jobId }) => jobId === turn.jobId).map(({ lineId }) => lineId));
  const of = [...(lines.size > 1 ? [turn.lineName] : []), ...(jobs.size > 1 ? [turn.jobName] : [])];
  return [turn.placement.name, ...of].join(', ');
}

export const doneWords = {
  goOn: (name: string) => `Go on with ${name}`,
  same: 'The press stays as it is set.',
  set: (recipe: string) => `Set the press to ${recipe}.`,
  all: 'All is pressed',
  short: (pieces: string) => `${pieces} cannot be made: no blank is left`,
  table: 'Pressed by size',
  head: { size: 'Size', good: 'Good', seconds: 'Second', lost: 'Lost' },
  inAll: 'In all',
  of: (good: string, wanted: string) => `${good} of ${wanted}`,
  nothingLost: 'Nothing was lost.',
  after: 'What came of it',
  run: 'To the run',
  further: 'One more piece',
  furtherOf: (size: string) => `One more ${size}`,
} as const;

/** @returns which print it was, and what it came to once nothing of it is left to press */
export function turnDone(turn: Named & Pick<PressedTurn, 'toGo'>, turns: readonly Named[]): string {
  const name = turnName(turn, turns);
  if (turn.toGo > 0) return `${name}: nothing left to press`;
  return name === turn.placement.name ? `${name} is done` : `${name}: done`;
}

/** @returns “37 good, 2 lost”; what is still wanted and cannot be pressed now is told as well */
export function turnCounts(
  { good, seconds, scrap, toGo }: Pick<PressedTurn, 'good' | 'seconds' | 'scrap' | 'toGo'>,
  { number }: Formatter,
): string {
  return [
    `${number(good)} good`,
    ...(seconds > 0 ? [`${number(seconds)} for less`] : []),
    `${number(scrap)} lost`,
    ...(toGo > 0 ? [`${number(toGo)} still wanted`] : []),
  ].join(', ');
}

/** @returns “4 lost: ghost 2, specks 1, nobody said why 1.” */
export function lostByWords(
  { lost, lostBy }: Pick<PressedSummary, 'lost' | 'lostBy'>,
  { number }: Formatter,
): string {
  if (lost === 0) return doneWords.nothingLost;
  const parts = lostBy.map(
    ({ fault, pieces }) =>
      `${fault === null ? 'nobody said why' : faultNames[fault].toLowerCase()} ${number(pieces)}`,
  );
  return `${number(lost)} lost: ${listed(parts)}.`;
}
