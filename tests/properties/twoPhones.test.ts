import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runFacts } from '@/lib/making/runFacts';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import { runResult } from '@/lib/variances/runResult';
import { runSchema } from '@/shared/schemas/making/run';
import { pressingSchema } from '@/shared/schemas/making/runEvents';
import { clubStandard } from '@/tests/fixtures/clubStandard';
import { cases } from '@/tests/tools/cases';

/*
 * One run pressed on two phones, each of which began it by a standard of its own, one with a clock that stands behind.
 */
const pieces = fc.array(
  fc.record({
    isSecond: fc.boolean(),
    placementId: fc.constantFrom('back', 'badge'),
    size: fc.constantFrom('S', 'M', 'L', '3XL'),
    result: fc.constantFrom('good', 'good', 'second', 'scrap'),
    // The clock may be set back between two pieces.
    at: fc.integer({ min: 1_000, max: 90_000 }),
    isTakenBack: fc.constantFrom(true, false, false, false),
  }),
  { maxLength: 40 },
);

type Piece = typeof pieces extends fc.Arbitrary<readonly (infer Of)[]> ? Of : never;
const devices = ['firstphone00', 'secondphone0'] as const;

function notedOn(all: readonly Piece[], behindMs: number) {
  const counts = new Map<string, number>();
  return all.flatMap(({ isSecond, isTakenBack, at, ...piece }) => {
    const device = devices[isSecond ? 1 : 0];
    const written = (kind: 'pressing' | 'takeBack', body: object) => {
      const count = (counts.get(device) ?? 0) + 1;
      counts.set(device, count);
      return {
        ...{ id: `${device}-${count}`, kind, version: 1, device, count, body },
        at: Math.max(0, at - (isSecond ? behindMs : 0)),
      };
    };
    const pressing = written(
      'pressing',
      pressingSchema.parse({
        ...{ runId: 'run', standardId: `standard-${device}`, jobId: 'club', lineId: 'shirts' },
        ...{ ...piece, fault: piece.result === 'good' ? null : 'specks' },
      }),
    );
    return isTakenBack ? [pressing, written('takeBack', { entryId: pressing.id })] : [pressing];
  });
}

const standards = devices.map((device, at) => ({
  ...{ id: `standard-${device}`, device, at, withdrawn: false, body: clubStandard() },
}));
const run = runSchema.parse({ name: 'Club', works: [{ jobId: 'club' }] });

function told(entries: ReturnType<typeof notedOn>) {
  const notes = entriesInForce(entries) as unknown as Parameters<typeof runFacts>[2];
  const facts = runFacts('run', run, notes, standards);
  if (facts.standard === null) throw new Error('a run that has begun');
  const asked = { facts, paid: { blank: () => null, sheet: () => null }, orderHours: [] };
  return {
    facts,
    pressed: foldPressings(facts.standard.body, facts.pressings, facts.blankFaults),
    result: runResult(facts.standard, asked),
  };
}

test('a run pressed on two phones comes to the same whichever hands in first, and no piece is lost or counted twice', () => {
  fc.assert(
    fc.property(pieces, fc.integer({ min: 0, max: 200_000 }), fc.array(fc.nat()), (drawn, behindMs, keys) => {
      const entries = notedOn(drawn, behindMs);
      const mixed = entries
        .map((entry, at) => ({ entry, key: keys[at % Math.max(1, keys.length)] ?? at }))
        .toSorted((one, other) => one.key - other.key)
        .map(({ entry }) => entry);
      const found = told(entries);
      // Each phone hands in twice what it wrote; the other came first.
      expect(told([...mixed, ...mixed.toReversed()])).toEqual(found);
      const counted = found.pressed.turns.flatMap(({ counts }) => counts);
      const all = counted.reduce((sum, { good, seconds, scrap }) => sum + good + seconds + scrap, 0);
      expect(all).toBe(drawn.filter(({ isTakenBack }) => !isTakenBack).length);
      expect(found.facts.otherStandards).toHaveLength(1);
      expect(found.facts.standard?.id).toBe('standard-secondphone0');
    }),
    cases(200),
  );
});
