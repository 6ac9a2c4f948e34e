import { expect, it } from 'vitest';
import { workChoices } from '@/app/_year/workChoices';
import { runSchema } from '@/shared/schemas/making/run';
import { type RunStep, runStepSchema } from '@/shared/schemas/making/runEvents';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const step = (runId: string, count: number, what: 'closed' | 'reopened') => ({
  ...{ id: `s-${count}`, kind: 'runStep' as const, version: 1, device: 'device01', count, at: count },
  body: runStepSchema.parse({ runId, day: TEST_DAY, step: { what } }) satisfies RunStep,
});

it('offers closed runs last and says that they are, those opened again among the others', () => {
  const run = (name: string) => runSchema.parse({ name, works: [] });
  const choices = workChoices({
    runs: { a: run('Autumn'), b: run('Badges'), c: run('Club') },
    stallDays: {},
    kinds: { order: { bodies: {} } } as never,
    entries: { runStep: [step('a', 1, 'closed'), step('b', 2, 'closed'), step('b', 3, 'reopened')] },
  });
  expect(choices.map(({ label }) => label)).toEqual([
    'The workshop',
    'Run: Badges',
    'Run: Club',
    'Closed run: Autumn',
  ]);
});
