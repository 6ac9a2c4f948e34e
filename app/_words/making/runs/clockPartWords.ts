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

/** A design with its lines, by which prints of one name are told apart. */
export interface ClockDesign {
  readonly jobId: string;
  readonly name: string;
  readonly lines: readonly { readonly lineId: string; readonly name: string }[];
}

/** @returns a part of the clock in words: a print by its own name, where there are several designs or lines with theirs. */
export function clockPartWords(
  { what, name, turn }: Pick<ClockPart, 'what' | 'name'> & Partial<Pick<ClockPart, 'turn'>>,
  designs: readonly ClockDesign[],
): string {
  const part = name === '' ? names[what] : what === 'press' ? name : `${names[what]}: ${name}`;
  const design = turn && designs.find(({ jobId }) => jobId === turn.jobId);
  if (design === undefined) return part;
  const line = design.lines.find(({ lineId }) => lineId === turn?.lineId);
  return [
    part,
    ...(design.lines.length > 1 && line !== undefined ? [line.name] : []),
    ...(designs.length > 1 ? [design.name] : []),
  ].join(', ');
}
