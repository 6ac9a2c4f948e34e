import { expect, test } from 'vitest';
import { copiedJob } from '@/lib/drafts/copiedJob';
import { clubWith } from '@/tests/fixtures/clubJob';

const { job } = clubWith({});

test('a copy is being priced again, wanted on no day yet, and passes no stop', () => {
  const waivers = [
    { finding: 'SUB-01' as const, lineId: null, placementId: null, reason: 'the customer saw a sample' },
  ];
  const { job: copy, leftOut } = copiedJob(
    { ...job, state: 'done', archivedOn: '2026-11-02', wantedOn: '2026-12-14', waivers },
    [job.name],
  );
  expect(copy).toEqual({
    ...job,
    name: `Copy of ${job.name}`,
    state: 'draft',
    archivedOn: null,
    wantedOn: null,
    waivers: [],
  });
  expect(leftOut).toEqual({ wantedOn: '2026-12-14', waivers: 1 });
});

test('a copy of a copy is named after the first', () => {
  const name = `Copy of ${job.name}`;
  expect(copiedJob({ ...job, name }, [job.name, name]).job.name).toBe(`${name} 2`);
});
