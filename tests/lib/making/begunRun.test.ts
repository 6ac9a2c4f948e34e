import { describe, expect, it } from 'vitest';
import { stepToNote } from '@/lib/making/list/stepToNote';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import { standardOf } from '@/lib/making/standard/standardOf';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { runSchema } from '@/shared/schemas/making/run';
import { clubStandard, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';
import { jobsOf, ownBlock, planned, runAsked } from '@/tests/fixtures/clubRun';

describe('frozenPlan', () => {
  const asked = runAsked({ ownBlocks: [ownBlock('2026-12-05')] });
  const plan = planned(asked);
  const standard = standardOf({
    ...{ runId: 'run-1', run: asked.run, jobs: jobsOf(asked), plan },
    ...{ number: { count: 1, letter: 'A' }, issuedOn: '2026-11-25' },
  });

  it('tells of the frozen clock what the plan told: one evening from 18:00, 37 of 45 blanks', () => {
    const { sessions, firstDay, lastDay, pieces, take } = frozenPlan(standard);
    expect(sessions).toHaveLength(1);
    expect(sessions[0]).toMatchObject({ day: '2026-12-05', fromMinute: 18 * 60 });
    // 18:00 to 22:39.
    expect(Math.round(sessions[0]?.minutes ?? 0)).toBe(279);
    expect([firstDay, lastDay]).toEqual([plan.firstDay, '2026-12-05']);
    expect([pieces, take]).toEqual([37, 45]);
  });

  it('ends on the next day what runs past midnight, and not what ends at it', () => {
    const part = { ...standard.clock[1], what: 'pack' as const, name: '', session: 0, day: '2026-12-05' };
    const until = (minutes: number) =>
      frozenPlan({ ...standard, clock: [{ ...part, fromMinute: 1380, minutes }] }).lastDay;
    expect(until(60)).toBe('2026-12-05');
    expect(until(61)).toBe('2026-12-06');
  });
});

describe('stepToNote', () => {
  const run = runSchema.parse({
    name: 'Club',
    works: [{ jobId: 'club', orderId: 'club-order' }],
  });
  const all = (placementId: string) =>
    (
      [
        ['M', 9],
        ['L', 11],
        ['XL', 8],
        ['S', 4],
        ['2XL', 4],
        ['3XL', 1],
      ] as const
    ).flatMap(([size, many]) => Array.from({ length: many }, () => pieceOf(size, 'good', { placementId })));
  const told = (
    pieces: readonly ReturnType<typeof pieceOf>[],
    { isClosed = false, noted = 'accepted' as 'accepted' | 'printed' | 'packed', jobIds = ['club'] } = {},
  ) => {
    const pressings = pressedOn(pieces).map((one) => ({
      ...one,
      ...{ kind: 'pressing' as const, version: 1 },
    }));
    const steps = [{ step: { what: noted } }] as unknown as Parameters<typeof stepToNote>[3]['steps'];
    return stepToNote(
      { run, sheetsPrinted: [], pressings, isClosed },
      foldPressings(clubStandard, pressings, []),
      { orderId: 'club-order', jobIds },
      { steps },
    );
  };

  it('is none before anything is noted, printed with the first piece, pressed with the last', () => {
    expect(told([])).toBeNull();
    expect(told([pieceOf('M')])).toBe('printed');
    expect(told([pieceOf('M')], { noted: 'printed' })).toBeNull();
    expect(told(all('back'), { noted: 'printed' })).toBeNull();
    expect(told([...all('back'), ...all('badge')])).toBe('pressed');
  });

  it('is packed once the run is closed after the last piece, and never anything that is noted', () => {
    const pieces = [...all('back'), ...all('badge')];
    expect(told(pieces, { isClosed: true })).toBe('packed');
    expect(told(pieces, { isClosed: true, noted: 'packed' })).toBeNull();
    expect(told([pieceOf('M')], { isClosed: true })).toBe('printed');
  });

  it('is not pressed where the order has a job beside the run', () => {
    expect(told([...all('back'), ...all('badge')], { jobIds: ['club', 'caps'] })).toBe('printed');
  });
});
