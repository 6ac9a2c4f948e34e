import { describe, expect, it } from 'vitest';
import { runBody } from '@/app/_runSheet/runBody';
import { judgeJob } from '@/lib/costing/priceJob';
import { runSheetFacts } from '@/lib/making/sheet/runSheetFacts';
import { standardOf } from '@/lib/making/standard/standardOf';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, planned, runAsked } from '@/tests/fixtures/clubRun';
import { grid } from '@/tests/fixtures/costed';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const EVENING = '2026-11-28';

/** The worked example on its evening, 18:00 to 23:00, written by a 24-hour clock; another block where told. */
function bodyOf(
  inputs: Readonly<Record<string, JobInput>> = { club: club() },
  page: 'a4' | 'letter' = 'a4',
  block = ownBlock(EVENING),
  since: readonly string[] = [],
  missing: readonly string[] = [],
) {
  const asked = runAsked({ ownBlocks: [block] }, inputs);
  const jobs = jobsOf(asked);
  const workshop = { ...club().workshop, locale: 'en-GB' };
  return runBody({
    name: 'Club shirts',
    facts: runSheetFacts(jobs, { plan: planned(asked), cover: 'usual' }),
    findings: jobs.flatMap(({ input }) => judgeJob(input, grid).answer.findings),
    changed: since,
    missing,
    madeFor: ['Exampleton Ramblers Club'],
    wantedOn: null,
    today: TODAY,
    context: workshop,
    ...{ workshop, page },
  });
}
const pagesOf = async (body: ReturnType<typeof bodyOf>) =>
  readPages((await writtenPaper({ kind: 'jobSheet', body })).bytes);

describe('the sheet of a run', () => {
  it('has the clock of each step with its day', () => {
    const { before, presses, after } = bodyOf();
    // The worked run: set-up and tests from 18:00, backs to 20:04, a break, badges to 21:33, clean at 22:39.
    expect(before[2]?.aside).toMatch(/^Sat,? 28 Nov 18:00, /);
    expect(presses.map(({ aside }) => aside.split(';')[0]?.slice(-14))).toEqual([
      '18:30 to 20:04',
      '20:14 to 21:33',
    ]);
    expect(after[0]?.aside).toMatch(/21:33 to 22:39$/);
  });

  it('lays the sizes out in the order in which they are pressed, scarce ones last', () => {
    const { before, presses } = bodyOf();
    // 45 blanks of the three-in-four cover; the common size first, 3XL without a spare last.
    expect(before[1]?.aside).toBe('45 in all, 8 spares');
    const words = before[1]?.ticks.map((tick) => tick.replaceAll(/[⁨⁩]/g, ''));
    expect(words).toEqual(['L 13', 'M 11', 'XL 10', 'S 5', '2XL 5', '3XL 1, no spare']);
    for (const { sizes } of presses)
      expect(sizes).toEqual([
        { size: 'L', good: 11, spares: 2 },
        { size: 'M', good: 9, spares: 2 },
        { size: 'XL', good: 8, spares: 2 },
        { size: 'S', good: 4, spares: 1 },
        { size: '2XL', good: 4, spares: 1 },
        { size: '3XL', good: 1, spares: 0 },
      ]);
  });

  it('says names last where a line has them', () => {
    const sizes = club().job.lines[0]?.quantities ?? [];
    const list = sizes.flatMap(({ size, quantity }) =>
      Array.from({ length: quantity }, (_, at) => `Walker ${size} ${at + 1}`),
    );
    const named = changed(club(), { 'job.lines.0.nameList': list.join('\n') });
    expect(bodyOf().presses[0]?.lines).not.toContain('names last, each against the list');
    expect(bodyOf({ club: named }).presses[0]?.lines).toContain('names last, each against the list');
  });

  it('has the stop rule and what is to be watched', () => {
    const leads = bodyOf().watch.map(({ lead }) => lead);
    expect(leads).toEqual([
      'Three spoiled in twenty: stop and find the cause.',
      'Same fault twice running: stop and find it.',
      'Watch:',
    ]);
  });

  it('follows what was frozen once the run has begun, whatever the job says since', () => {
    const asked = runAsked({ ownBlocks: [ownBlock(EVENING)] }, { club: club() });
    const standard = standardOf({
      ...{ runId: 'run-1', run: asked.run, jobs: jobsOf(asked), plan: planned(asked) },
      ...{ number: { count: 1, letter: 'A' }, issuedOn: TODAY },
    });
    const since = changed(club(), {
      'job.name': 'Another name',
      'job.lines.0.quantities': [{ size: 'M', quantity: 50 }],
      'job.lines.0.placements.0.recipe.dwellSeconds': 70,
    });
    const later = runAsked({ ownBlocks: [ownBlock('2026-12-03')] }, { club: since });
    const facts = runSheetFacts(jobsOf(later), { standard });
    const was = runSheetFacts(jobsOf(asked), { plan: planned(asked), cover: 'usual' });
    expect([facts.pieces, facts.take, facts.tests]).toEqual([37, 45, was.tests]);
    expect(facts.stacks).toEqual(was.stacks.map((stack) => expect.objectContaining(stack)));
    expect(facts.clock).toEqual(was.clock);
    expect(facts.presses.map(({ times }) => times)).toEqual(was.presses.map(({ times }) => times));
    expect(facts.presses[0]?.of.placement.recipe.dwellSeconds).toBe(55);
    expect(facts.jobs[0]?.job.input.job.name).toBe(club().job.name);
    expect(facts.jobs[0]?.facts.sheets).toBe(53);
  });

  it('says that a job changed since it began', () => {
    const { watch } = bodyOf(undefined, 'a4', undefined, ['Club shirts']);
    expect(watch[1]).toEqual({
      lead: 'As the run began.',
      text: 'Club shirts changed since; this sheet goes by what was frozen then.',
    });
  });

  it('says of which jobs nothing can be drawn any more', () => {
    const { watch } = bodyOf(undefined, 'a4', undefined, [], ['Mugs']);
    expect(watch[1]).toMatchObject({
      lead: 'Not on this sheet.',
      text: expect.stringMatching(/^Mugs: no longer here/),
    });
  });

  it.each(['a4', 'letter'] as const)('is one page of %s with six sizes and two prints', async (page) => {
    const { pages, text } = await pagesOf(bodyOf(undefined, page));
    expect(pages).toHaveLength(1);
    for (const told of ['Run sheet', 'pieces 37', 'Print 53 sheets', 'Faults, tallied:', 'packed by'])
      expect(text).toContain(told);
  });

  it('goes on over a second page with its name again, and tells each job apart', async () => {
    const other = changed(club(), { 'job.name': 'Garden shirts' });
    const day = ownBlock(EVENING, 8 * 60, 900);
    const body = bodyOf({ club: club(), other }, 'letter', day);
    expect(body.pieces).toBe(74);
    // Prints of one name are told by their jobs, each with its own time: no two begin at once.
    expect(new Set(body.presses.map(({ aside }) => aside.split(';')[0])).size).toBe(4);
    const { pages, text } = await pagesOf(body);
    expect(pages).toHaveLength(2);
    expect(text).toContain('Run sheet: Club shirts, continued');
  });
});
