import type { Formatter } from '@/app/_words/formatter';
import type { Pace } from '@/lib/calendar/pace';
import type { RunAnswerLine } from './runAnswerWords';

const stages: Readonly<Record<Pace['bottleneck'], string>> = {
  printer: 'the printer sets the pace',
  press: 'the press sets the pace',
  hands: 'your hands set the pace',
};

export const stageNames: Readonly<Record<Pace['bottleneck'], string>> = {
  printer: 'Printer',
  press: 'Press',
  hands: 'Your hands',
};

/** @example '14 pieces an hour' ': your hands set the pace' */
export const paceWords = ({ each, bottleneck }: Pace, { number }: Formatter): RunAnswerLine => ({
  key: `${number(60 / each[bottleneck], 1)} pieces an hour`,
  after: `: ${stages[bottleneck]}`,
});
