import { describe, expect, it } from 'vitest';
import { laidOutAnswers } from '@/app/_pricing/laidOutAnswers';
import { answerRequest } from '@/app/_requests/answerRequest';
import { priceJob } from '@/lib/costing/priceJob';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

/** What the page is given, one after the other. */
function all(input: JobInput, search = new LayoutSearch()) {
  const { answer, further } = laidOutAnswers(input, grid, search);
  return [answer, ...(further === null ? [] : [...further].filter((one) => one !== null))];
}

const drawn = (answer: ReturnType<typeof all>[number] | undefined) =>
  answer?.shared?.drawn.reduce((sum, { count }) => sum + count, 0);

describe('the prices of a job with shared sheets', () => {
  it('come by the first layout at once, as fast as without any search, then by the better one', () => {
    const answers = all(sharedJob());
    expect(answers.map(drawn)).toEqual([4, 3]);
    expect(answers.map(({ shared }) => shared?.spared)).toEqual([
      { sheets: 0, rollMm: null },
      { sheets: 1, rollMm: null },
    ]);
    expect(answers[0]?.answer).toEqual(priceJob(sharedJob(), grid));
  });

  it('are in the end what the API and the command say at once', () => {
    const { kind, findings, ...told } = answerRequest(sharedJob(), sharedJob().asOf);
    const { findings: _, ...last } = all(sharedJob()).at(-1)?.answer ?? { findings: [] };
    expect(kind).toBe('answered');
    expect(JSON.parse(JSON.stringify(told))).toEqual(JSON.parse(JSON.stringify(last)));
    expect(findings.length).toBeGreaterThan(0);
  });

  it('give the page the layouts by which its studies draw what the prices stand on', () => {
    const last = all(sharedJob()).at(-1);
    const { layouts } = last ?? {};
    expect(sheetsAnswer({ ...sharedJob(), layouts }, grid)?.plan.sheets).toEqual(last?.shared?.drawn);
  });

  it('come by the better layout at once after an edit that moves no print, and once more when it is undone', () => {
    const search = new LayoutSearch();
    all(sharedJob(), search);
    const edited = all(sharedJob({ 'job.lines.0.name': 'Caps' }), search);
    expect(edited.map(drawn)).toEqual([3]);
    expect(all(sharedJob(), search).map(drawn)).toEqual([3]);
  });

  it('are looked at no further where prints lie apart', () => {
    const [only, ...others] = all(club());
    expect(others).toEqual([]);
    expect(only).toEqual({ answer: priceJob(club(), grid), layouts: undefined, shared: null });
  });
});
