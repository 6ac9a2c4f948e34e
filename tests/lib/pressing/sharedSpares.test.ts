import { describe, expect, it } from 'vitest';
import { foldPressings } from '@/lib/pressing/foldPressings';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { clubStandard, faultyOn, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';

const [work] = clubStandard.works;
const [line] = work?.lines ?? [];
const [back] = line?.placements ?? [];
const [size] = line?.sizes ?? [];
if (work === undefined || line === undefined || back === undefined || size === undefined)
  throw new Error('the fixture has changed');

/** Two stars and five moons on L, one print each; the seven and two spares lie there, both by the paper with the moons. */
const standard = (more: Partial<typeof line> = {}): RunStandard => ({
  ...clubStandard,
  works: [of('star', 2, 2, more), of('moon', 5, 7, more)],
  sizes: [
    { jobId: 'star', lineId: 'star', size: 'L' },
    { jobId: 'moon', lineId: 'moon', size: 'L' },
  ],
});
const of = (jobId: string, wanted: number, take: number, more: Partial<typeof line>) => ({
  ...{ ...work, jobId, name: jobId },
  lines: [
    { ...line, ...more, lineId: jobId, placements: [back], sizes: [{ ...size, size: 'L', wanted, take }] },
  ],
});

const piece = (jobId: string, result: Pressing['result']) =>
  pieceOf('L', result, { jobId, lineId: jobId, ...(result === 'scrap' ? { fault: 'ghost' } : {}) });
const times = (many: number, one: Pressing): readonly Pressing[] => Array.from({ length: many }, () => one);
function counted(
  pieces: readonly Pressing[],
  faulty: Parameters<typeof foldPressings>[2] = [],
  by = standard(),
) {
  const run = foldPressings(by, pressedOn(pieces) as readonly PressedEntry[], faulty);
  const at = (jobId: string) => run.turns.find((turn) => turn.jobId === jobId)?.counts[0];
  return { run, star: at('star'), moon: at('moon') };
}

describe('spares that two designs share', () => {
  it('are told of both before anything is pressed', () => {
    const { star, moon } = counted([]);
    expect(star).toMatchObject({ spares: 2, sparesLeft: 2, isShared: true, ready: 2, short: 0 });
    expect(moon).toMatchObject({ spares: 2, sparesLeft: 2, isShared: true, ready: 5, short: 0 });
  });

  it('are taken by the design that spoils one, though none stood beside it', () => {
    const { star, moon } = counted(times(2, piece('star', 'scrap')));
    expect(star).toMatchObject({ toGo: 2, ready: 2, short: 0, sparesLeft: 0, moreThanCame: 0 });
    expect(moon).toMatchObject({ toGo: 5, ready: 5, short: 0, sparesLeft: 0 });
  });

  it('are short only once the stack is empty, and of nothing that the other design still needs', () => {
    const { star, moon, run } = counted(times(3, piece('star', 'scrap')));
    // Nine blanks, three gone: six for seven that are wanted.
    expect(star).toMatchObject({ toGo: 2, ready: 1, short: 1, sparesLeft: -1 });
    expect(moon).toMatchObject({ toGo: 5, ready: 5, short: 0, sparesLeft: -1 });
    expect(run.current?.jobId).toBe('star');
  });

  it('count faulty blanks and further good pieces as gone, whoever took them', () => {
    expect(counted([], [faultyOn('L', 1, 1)]).star).toMatchObject({ sparesLeft: 1, short: 0 });
    const further = counted([...times(3, piece('star', 'good')), ...times(5, piece('moon', 'good'))]);
    expect(further.moon).toMatchObject({ toGo: 0, sparesLeft: 1, moreThanCame: 0 });
    expect(further.star).toMatchObject({ toGo: 0, sparesLeft: 1, moreThanCame: 0 });
  });

  it('are more than came only beyond the whole stack', () => {
    const { star, moon } = counted([...times(5, piece('moon', 'good')), ...times(5, piece('star', 'good'))]);
    // Ten pressed of nine: of the star, which took more than its own.
    expect([star?.moreThanCame, moon?.moreThanCame]).toEqual([1, 0]);
  });

  it('of what customers brought are for their own job alone', () => {
    const { star, moon } = counted([piece('star', 'scrap')], [], standard({ isBrought: true }));
    expect(star).toMatchObject({ spares: 0, sparesLeft: -1, short: 1, isShared: false });
    expect(moon).toMatchObject({ spares: 2, sparesLeft: 2, short: 0 });
  });
});
