import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyRunNote, factsOfRuns, runFacts, type StandardPaper } from '@/lib/making/runFacts';
import { standardOf } from '@/lib/making/standard/standardOf';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { RunStep } from '@/shared/schemas/making/runEvents';
import { jobsOf, planned, runAsked } from '@/tests/fixtures/clubRun';
import { cases } from '@/tests/tools/cases';

const asked = runAsked();
const body = standardOf({
  ...{ runId: 'r', run: asked.run, jobs: jobsOf(asked), plan: planned(asked) },
  ...{ number: { count: 1, letter: 'A' as const }, issuedOn: '2026-11-25' },
});
const paper = (id: string, withdrawn = false, runId = 'r'): StandardPaper => ({
  ...{ id, device: 'aaaaaaaa', at: 0, withdrawn },
  body: { ...body, runId },
});

const at = (device: string, count: number) => ({
  id: `${device}-${count}`,
  version: 1,
  device,
  count,
  at: count * 1000,
});
const step = (
  device: string,
  count: number,
  what: 'begun' | 'closed' | 'reopened',
  runId = 'r',
): AnyRunNote => {
  const told: RunStep['step'] = what === 'closed' ? { what, note: '' } : { what };
  return {
    ...at(device, count),
    kind: 'runStep',
    body: { runId, standardId: null, day: '2026-11-25', step: told },
  };
};
const pressed = (device: string, count: number, runId = 'r'): AnyRunNote => ({
  ...at(device, count),
  kind: 'pressing',
  body: {
    ...{ runId, standardId: null, jobId: 'club', lineId: 'shirts', placementId: 'back', size: 'M' },
    ...{ result: 'good', fault: null },
  },
});
const worked = (device: string, count: number, of: 'run' | 'order'): AnyRunNote => ({
  ...at(device, count),
  kind: 'hours',
  body: {
    ...{ day: '2026-11-25', minutes: 5, for: { kind: of, id: 'r' }, element: 'pack' },
    ...{ placementId: null, pieces: null, from: 'typed', note: '' },
  },
});
const factsOf = (notes: readonly AnyRunNote[], papers: readonly StandardPaper[] = []) =>
  runFacts('r', asked.run, notes, papers);

describe('what is known of a run', () => {
  it('is what was noted of it and of no other, on any device', () => {
    const facts = factsOf([
      ...[step('aaaaaaaa', 1, 'begun'), pressed('bbbbbbbb', 1), pressed('aaaaaaaa', 2, 'other')],
      ...[worked('aaaaaaaa', 3, 'run'), worked('aaaaaaaa', 4, 'order'), pressed('bbbbbbbb', 2)],
    ]);
    expect(facts.pressings.map(({ id }) => id)).toEqual(['bbbbbbbb-1', 'bbbbbbbb-2']);
    expect(facts.hours.map(({ id }) => id)).toEqual(['aaaaaaaa-3']);
    expect(facts.devices).toEqual(['aaaaaaaa', 'bbbbbbbb']);
    expect([facts.isBegun, facts.isClosed]).toEqual([true, false]);
  });

  it('is of every run at once what it is of each alone, of those too of which nothing was noted', () => {
    const runs = { r: asked.run, other: asked.run, still: asked.run };
    const notes = [
      ...[step('aaaaaaaa', 1, 'begun'), pressed('bbbbbbbb', 1, 'other'), pressed('aaaaaaaa', 2)],
      ...[
        worked('aaaaaaaa', 3, 'order'),
        step('aaaaaaaa', 4, 'closed', 'other'),
        pressed('bbbbbbbb', 5, 'gone'),
      ],
    ];
    const papers = [paper('one'), paper('two', false, 'other'), paper('three', true)];
    const all = factsOfRuns(runs, notes, papers);
    expect(all).toEqual(Object.entries(runs).map(([id, run]) => runFacts(id, run, notes, papers)));
    expect(all.map(({ pressings, isClosed }) => [pressings.length, isClosed])).toEqual([
      [1, false],
      [1, true],
      [0, false],
    ]);
  });

  it('counts a note that comes twice once', () => {
    expect(factsOf([pressed('aaaaaaaa', 1), pressed('aaaaaaaa', 1)]).pressings).toHaveLength(1);
  });

  it('holds the newest standard that was not withdrawn, and tells of others', () => {
    const facts = factsOf(
      [],
      [paper('one'), paper('two'), paper('three', true), paper('four', false, 'other')],
    );
    expect(facts.standard?.id).toBe('two');
    expect(facts.otherStandards.map(({ id }) => id)).toEqual(['one']);
    expect(factsOf([], [paper('three', true)]).standard).toBe(null);
  });

  it('is begun by a step, a standard or a piece pressed, and by nothing else', () => {
    expect(factsOf([worked('aaaaaaaa', 1, 'run')]).isBegun).toBe(false);
    expect(factsOf([step('aaaaaaaa', 1, 'begun')]).isBegun).toBe(true);
    expect(factsOf([], [paper('one')]).isBegun).toBe(true);
    expect(factsOf([pressed('aaaaaaaa', 1)]).isBegun).toBe(true);
  });

  it('is closed until it is opened again', () => {
    const closed = [step('aaaaaaaa', 1, 'begun'), step('aaaaaaaa', 2, 'closed')];
    expect(factsOf(closed).isClosed).toBe(true);
    expect(factsOf([...closed, step('aaaaaaaa', 3, 'reopened')]).isClosed).toBe(false);
  });

  it('is the same in whatever order the notes of two devices come in', () => {
    const notes = [1, 2, 3, 4].flatMap((count) => [pressed('aaaaaaaa', count), pressed('bbbbbbbb', count)]);
    const expected = factsOf(entriesInForce(notes));
    fc.assert(
      fc.property(fc.shuffledSubarray(notes, { minLength: notes.length }), (mixed) => {
        expect(factsOf(entriesInForce(mixed))).toEqual(expected);
      }),
      cases(30),
    );
  });
});
