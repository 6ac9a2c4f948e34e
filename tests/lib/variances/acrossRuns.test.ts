import { expect, it } from 'vitest';
import { type ClosedRun, linesOverRuns } from '@/lib/variances/acrossRuns';
import { runResult } from '@/lib/variances/runResult';
import { actual, clubFacts, clubStandard, noFacts, noteOf } from '@/tests/fixtures/clubStandard';

const paid = { blank: () => null, sheet: () => null };

function closed(runId: string, facts: typeof noFacts): ClosedRun {
  const result = runResult({ body: clubStandard() }, { facts, paid, orderHours: [] });
  return { runId, name: runId, closedOn: '2026-12-12', result };
}

it('linesOverRuns puts what cost most first, with how often and why', () => {
  const cause = noteOf('runStep', {
    ...{ runId: 'run', standardId: null, day: '2026-12-12' },
    step: { what: 'cause' as const, line: 'labour' as const, cause: 'interruption' as const, note: '' },
  });
  const worked = closed('one', { ...clubFacts({ reprints: 622 }), steps: [cause] });
  // 50 mL for 35.102 at 0.16: 2.38 more.
  const other = closed('two', { ...noFacts, actuals: [actual({ of: 'ink', mL: 50 })] });
  const [first, ...rest] = linesOverRuns([worked, other]);
  expect(first).toEqual({
    ...{ line: 'labour', minor: -1552, against: 1, runs: 2 },
    causes: [{ cause: 'interruption', runs: 1 }],
  });
  expect(rest.find(({ line }) => line === 'inkUsage')).toMatchObject({ minor: -142 - 238, against: 2 });
});
