import type { Formatter } from '@/app/_words/formatter';
import type { PaceGain, RunPace } from '@/lib/making/runPlan';
import type { RunAnswerLine } from './runAnswerWords';

const stages: Readonly<Record<RunPace['bottleneck'], string>> = {
  printer: 'the printer sets the pace',
  press: 'the press sets the pace',
  hands: 'your hands set the pace',
};

export const stageNames: Readonly<Record<RunPace['bottleneck'], string>> = {
  printer: 'Printer',
  press: 'Press',
  hands: 'Your hands',
};

/** @example '14 pieces an hour' ': the press sets the pace' */
export const paceWords = ({ piecesPerHour, bottleneck }: RunPace, { number }: Formatter): RunAnswerLine => ({
  key: `${number(piecesPerHour, 1)} pieces an hour`,
  after: ` while it is pressed; ${stages[bottleneck]}`,
});

const widened: Readonly<Record<PaceGain['what'], string>> = {
  printBefore: 'All sheets printed the evening before',
  preTaping: 'Transfers taped at the bench before',
  secondPress: 'A second press',
};

/** @returns what a change would bring: what it is, and by how much it is faster. */
export const gainWords = ({ what, gain, next }: PaceGain, { number }: Formatter): RunAnswerLine => ({
  key: widened[what],
  after: gain === 0 ? 'no faster' : `+${number(gain * 100, 1)} %; then ${stages[next]}`,
});
