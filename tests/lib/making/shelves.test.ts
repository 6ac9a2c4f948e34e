import { expect, it } from 'vitest';
import { runShelves } from '@/lib/making/list/runShelves';
import { toMake } from '@/lib/making/list/toMake';
import { runFacts } from '@/lib/making/runFacts';
import { runSchema } from '@/shared/schemas/making/run';
import { stallDaySchema } from '@/shared/schemas/stallDay';

const run = (id: string, about: Parameters<typeof runSchema.parse>[0]) =>
  runFacts(id, runSchema.parse(about), [], []);

it('runShelves puts runs in one order on every device, whatever order they came in', () => {
  const runs = [
    run('no-day', { name: 'A' }),
    run('b', { name: 'Shirts', startsOn: '2026-12-07' }),
    run('a', { name: 'Shirts', startsOn: '2026-12-07' }),
    run('mugs', { name: 'Mugs', startsOn: '2026-12-07' }),
    run('away-b', { name: 'B', archivedOn: '2026-12-01' }),
    run('away-a', { name: 'A', archivedOn: '2026-12-01' }),
  ];
  for (const all of [runs, runs.toReversed()]) {
    const { open, putAway } = runShelves(all, () => null);
    expect(open.map(({ runId }) => runId)).toEqual(['mugs', 'a', 'b', 'no-day']);
    expect(putAway.map(({ runId }) => runId)).toEqual(['away-a', 'away-b']);
  }
});

it('toMake puts stall days of one day and name by their id', () => {
  const stallDay = stallDaySchema.parse({
    name: 'Fair',
    days: [{ id: 'day', day: '2026-12-12', fromMinute: 600, toMinute: 960 }],
    ranges: [
      { id: 'shirts', name: 'Shirts', pieces: 9, designs: [{ jobId: 'club', lineId: 'shirts', share: 1 }] },
    ],
  });
  const rows = ['two', 'one'].map((id) => ({ id, stallDay }));
  for (const coming of [rows, rows.toReversed()])
    expect(toMake([], coming, [], () => true).map(({ id }) => id)).toEqual(['one', 'two']);
});
