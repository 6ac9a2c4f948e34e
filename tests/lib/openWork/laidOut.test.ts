import { describe, expect, it } from 'vitest';
import { type AnyRunNote, runFacts, type StandardPaper } from '@/lib/making/runFacts';
import { laidOut } from '@/lib/openWork/laidOut';
import { runSchema } from '@/shared/schemas/making/run';
import { TODAY } from '@/tests/fixtures/clubJob';
import { clubStandard } from '@/tests/fixtures/clubStandard';

type Work = readonly [jobId: string, orderId: string | null];

/** A run of some works; begun with `laid` on its standard, or closed. */
function run(
  runId: string,
  works: readonly Work[],
  { laid, isClosed = false }: { readonly laid?: readonly Work[]; readonly isClosed?: boolean } = {},
) {
  const [own] = clubStandard().works;
  if (own === undefined) throw new Error('no work on the standard');
  const standard: StandardPaper = {
    ...{ id: `standard ${runId}`, device: 'a', at: 1, withdrawn: false },
    body: {
      ...clubStandard(),
      runId,
      works: (laid ?? []).map(([jobId, orderId]) => ({ ...own, jobId, orderId })),
    },
  };
  const closed: AnyRunNote = {
    ...{ kind: 'runStep', id: `step ${runId}`, version: 1, device: 'a', count: 1, at: 2 },
    body: { runId, standardId: null, day: TODAY, step: { what: 'closed', note: '' } },
  };
  const body = runSchema.parse({
    name: runId,
    works: works.map(([jobId, orderId]) => ({ jobId, orderId })),
  });
  return runFacts(runId, body, isClosed ? [closed] : [], laid === undefined ? [] : [standard]);
}

const told = (...runs: ReturnType<typeof run>[]) => {
  const { sure, before } = laidOut(runs, []);
  return [[...sure], [...before]];
};

describe('what needs no buying', () => {
  it('is what a run laid out when it began, not what joined it since', () => {
    expect(
      told(
        run(
          'begun',
          [
            ['shirts', 'club'],
            ['mugs', null],
          ],
          { laid: [['shirts', 'club']] },
        ),
      ),
    ).toEqual([['shirts club'], []]);
    expect(told(run('planned', [['shirts', 'club']]))).toEqual([[], []]);
  });

  it('is what a closed run made for an order; what it made for nobody may be made again', () => {
    const works: readonly Work[] = [
      ['shirts', 'club'],
      ['mugs', null],
    ];
    expect(told(run('closed', works, { laid: works, isClosed: true }))).toEqual([['shirts club'], ['mugs ']]);
    // Another run is still to make both.
    expect(told(run('closed', works, { laid: works, isClosed: true }), run('next', works))).toEqual([[], []]);
  });
});
