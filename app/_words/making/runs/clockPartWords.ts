import type { ClockPart } from '@/shared/schemas/making/runPapers';

const names: Readonly<Record<ClockPart['what'], string>> = {
  print: 'Print the sheets',
  dry: 'Sheets dry',
  setUp: 'Warm up, lay out',
  test: 'Test presses',
  press: 'Press',
  break: 'Break',
  finish: 'Inspect, fold',
  cool: 'Pieces cool',
  pack: 'Pack',
  cleanDown: 'Clean down, log',
  deliver: 'Deliver',
};

/** @returns a part of the clock in words: a print by its own name. */
export const clockPartWords = ({ what, name }: Pick<ClockPart, 'what' | 'name'>): string =>
  name === '' ? names[what] : what === 'press' ? name : `${names[what]}: ${name}`;
