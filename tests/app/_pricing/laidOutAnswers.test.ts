import { describe, expect, it } from 'vitest';
import { laidOutAnswers } from '@/app/_pricing/laidOutAnswers';
import { answerRequest } from '@/app/_requests/answerRequest';
import { BatchLayouts } from '@/lib/costing/batchLayouts';
import { priceJob } from '@/lib/costing/priceJob';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

const remembering = () => ({ search: new LayoutSearch(), batches: new BatchLayouts() });

/** What the page is given, one after the other. */
function all(input: JobInput, memory = remembering()) {
  const { answer, further } = laidOutAnswers(input, grid, memory);
  return [answer, ...(further === null ? [] : [...further].filter((one) => one !== null))];
}

/** Other batches are packed for who is shown a curve, and are no part of the price. */
const plain = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, inside) => (key === 'batches' ? undefined : inside)));

const drawn = (answer: ReturnType<typeof all>[number] | undefined) =>
  answer?.shared?.drawn.reduce((sum, { count }) => sum + count, 0);

describe('the prices of a job with shared sheets', () => {
  it('come by the first layout at once, as fast as without any search, then by the better one and with other batches packed', () => {
    const answers = all(sharedJob());
    expect(answers.map(drawn)).toEqual([4, 3, 3]);
    expect(answers.map(({ shared }) => shared?.spared)).toEqual([
      { sheets: 0, rollMm: null },
      { sheets: 1, rollMm: null },
      { sheets: 1, rollMm: null },
    ]);
    // The curve follows once, with all of them, and the job itself stays as it is.
    const batches = answers.map(({ answer }) =>
      answer.layout?.some(({ ganged }) => ganged?.batches !== undefined),
    );
    expect(batches).toEqual([false, false, true]);
    expect(answers[2]?.answer.prices).toEqual(answers[1]?.answer.prices);
    expect(answers[0]?.answer).toEqual(priceJob(sharedJob(), grid));
  });

  it('are in the end what the API and the command say at once', () => {
    const { kind, findings, ...told } = answerRequest(sharedJob(), sharedJob().asOf);
    const { findings: _, ...last } = all(sharedJob()).at(-1)?.answer ?? { findings: [] };
    expect(kind).toBe('answered');
    expect(plain(told)).toEqual(plain(last));
    expect(findings.length).toBeGreaterThan(0);
  });

  it('give the page the layouts by which its studies draw what the prices stand on', () => {
    const last = all(sharedJob()).at(-1);
    const { layouts } = last ?? {};
    expect(sheetsAnswer({ ...sharedJob(), layouts }, grid)?.plan.sheets).toEqual(last?.shared?.drawn);
  });

  it('come by the better layout at once after an edit that moves no print, and once more when it is undone', () => {
    const memory = remembering();
    all(sharedJob(), memory);
    const edited = all(sharedJob({ 'job.lines.0.name': 'Caps' }), memory);
    expect(edited.map(drawn)).toEqual([3]);
    expect(all(sharedJob(), memory).map(drawn)).toEqual([3]);
  });

  it('are looked at no further where prints lie apart', () => {
    const [only, ...others] = all(club());
    expect(others).toEqual([]);
    expect(only).toEqual({ answer: priceJob(club(), grid), layouts: undefined, shared: null });
  });
});
