import { createHash } from 'node:crypto';
import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { watchNotes } from '@/app/_docket/jobSheet/watchNotes';
import { runBody } from '@/app/_runSheet/runBody';
import { sheetFindings } from '@/app/_runSheet/sheetFindings';
import { judgeJob } from '@/lib/costing/priceJob';
import { runSheetFacts } from '@/lib/making/sheet/runSheetFacts';
import { standardOf } from '@/lib/making/standard/standardOf';
import { recipesPressed } from '@/lib/pressing/withoutPressed';
import type { JobInput } from '@/shared/schemas/request';
import { aPicture } from '@/tests/fixtures/aPicture';
import { changed, club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, planned, runAsked } from '@/tests/fixtures/clubRun';
import { grid } from '@/tests/fixtures/costed';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { pngChunk, pngFile } from '@/tests/fixtures/pictures/fileBytes';
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
  readPages((await writtenPaper({ kind: 'jobSheet', body }, { pictures: new Map([[PICTURE, png]]) })).bytes);

/** Four pixels, each row after its filter. */
const rows = [0, 255, 0, 0, 0, 255, 0, 0, 0, 0, 255, 255, 255, 255];
const png = pngFile(2, 2, { chunks: [pngChunk('IDAT', [...deflateSync(Uint8Array.from(rows))])] });
const PICTURE = createHash('sha256').update(png).digest('hex');
const pictured = () =>
  clubWith({
    'artwork:hill-path.picture': aPicture({ fileId: PICTURE }),
    'artwork:club-crest.picture': aPicture({ fileId: PICTURE }),
  });

/** A name for each shirt. */
function named() {
  const list = (club().job.lines[0]?.quantities ?? []).flatMap(({ size, quantity }) =>
    Array.from({ length: quantity }, (_, at) => `Walker ${size} ${at + 1}`),
  );
  return clubWith({ 'job.lines.0.nameList': list.join('\n') });
}

const longNamed = () =>
  clubWith({
    'job.lines.0.name': 'Long-sleeved white functional polyester shirt with raglan sleeves',
    'job.lines.0.placements.0.name': 'Large back picture with the path over the hills and all its stations',
    'job.lines.0.placements.1.name': 'Badge with the year, left chest, above the seam of the pocket',
    'artwork:hill-path.name': 'Hill path picture as redrawn by the committee in October',
  });

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
        { size: 'L', good: 11, spares: 2, isShared: false },
        { size: 'M', good: 9, spares: 2, isShared: false },
        { size: 'XL', good: 8, spares: 2, isShared: false },
        { size: 'S', good: 4, spares: 1, isShared: false },
        { size: '2XL', good: 4, spares: 1, isShared: false },
        { size: '3XL', good: 1, spares: 0, isShared: false },
      ]);
  });

  it('tells spares that two jobs share once, with room to count them, and not beside each of them', () => {
    const { before, presses } = bodyOf({ club: club(), again: club() }, 'a4', ownBlock(EVENING, 8 * 60, 900));
    const stacks = before.find(({ heading }) => heading === 'Lay out the stacks');
    const plainly = (words: readonly string[] = []) => words.map((one) => one.replaceAll(/[⁨⁩]/g, ''));
    // 87 blanks of both, 13 of them spares; each stack by itself holds the pieces that are wanted.
    expect(stacks?.aside).toBe('87 in all, 13 spares');
    expect(stacks?.ticks).toHaveLength(12);
    expect(plainly(stacks?.ticks)).toContain('M 9');
    expect(plainly([stacks?.tally.words ?? ''])[0]).toMatch(/^Spares of White shirt.*, all designs/);
    expect(plainly(stacks?.tally.labels)).toEqual(['S 2', 'M 3', 'L 3', 'XL 2', '2XL 2', '3XL 1']);
    for (const { sizes } of presses) expect(sizes.every(({ isShared }) => isShared)).toBe(true);
  });

  it('says names last where a line has them', () => {
    expect(bodyOf().presses[0]?.lines).not.toContain('names last, each against the list');
    expect(bodyOf({ club: named() }).presses[0]?.lines).toContain('names last, each against the list');
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

  it('has first of what is to be watched that it is done too late, by its own clock', () => {
    const wanted = { club: clubWith({ 'job.wantedOn': '2026-11-26' }) };
    const asked = runAsked({ ownBlocks: [ownBlock(EVENING)] }, wanted);
    const standard = standardOf({
      ...{ runId: 'run-1', run: asked.run, jobs: jobsOf(asked), plan: planned(asked) },
      ...{ number: { count: 1, letter: 'A' }, issuedOn: TODAY },
    });
    const later = runAsked({ ownBlocks: [ownBlock('2026-12-03')] }, wanted);
    const jobs = jobsOf(later);
    const late = (of: Parameters<typeof sheetFindings>[1]) =>
      watchNotes(
        sheetFindings({ id: 'run-1', jobs, answer: null, pressed: recipesPressed([], []) }, of),
        club().workshop,
      ).find(({ lead }) => lead === 'Watch:')?.text;
    // Begun for the 28th, and planned for 3 December by now.
    expect(late({ standard })).toMatch(/is done on .*28.*, 2 days after the day it is wanted/);
    expect(late({ plan: planned(later) })).toMatch(/is done on .*3.*, 7 days after the day it is wanted/);
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
    const passed = (body: ReturnType<typeof bodyOf>) => ({
      ...body,
      watch: [
        ...body.watch,
        { lead: 'Passed by you:', text: 'The club saw a sample and takes the risk. '.repeat(4) },
      ],
    });
    const counts = { S: 22, M: 26, L: 26, XL: 24, '2XL': 18, '3XL': 12 };
    const quantities = Object.entries(counts).map(([size, quantity]) => ({ size, quantity }));
    const large = bodyOf(
      { club: clubWith({ 'job.lines.0.quantities': quantities }) },
      page,
      ownBlock(EVENING, 480, 950),
    );
    expect(large.presses.map(({ perTick }) => perTick)).toEqual([2, 2]);
    expect((await pagesOf(large)).pages).toHaveLength(1);
    for (const job of [club(), named(), pictured(), longNamed()]) {
      const { pages, text } = await pagesOf(passed(bodyOf({ club: job }, page)));
      expect(pages).toHaveLength(1);
      for (const told of ['Run sheet', 'pieces 37', 'Print 53 sheets', 'Faults, tallied:', 'packed by'])
        expect(text).toContain(told);
    }
  });

  it('shows each print mirrored on paper and as seen: its picture, or an F where none is kept', async () => {
    const [bare] = (await pagesOf(bodyOf())).pages;
    // Two prints, each first on the paper, then on the drawn piece.
    expect(bare?.marks).toEqual(['reversed', 'right', 'reversed', 'right']);
    expect(bare?.turned).toEqual([]);
    const [shown] = (await pagesOf(bodyOf({ club: pictured() }))).pages;
    expect(shown?.marks).toEqual([]);
    expect(shown?.turned).toEqual([true, false, true, false]);
    // A print that nobody mirrors is seen the wrong way round before a sheet is spent on it.
    const waiver = { finding: 'ART-11', placementId: 'back', lineId: 'shirts', reason: 'a test of the club' };
    const body = bodyOf({
      club: clubWith({ 'job.lines.0.placements.0.mirror': false, 'job.waivers': [waiver] }),
    });
    expect(body.watch.find(({ lead }) => lead === 'Passed by you:')?.text).toMatch(/a test of the club/);
    const [unturned] = (await pagesOf(body)).pages;
    expect(unturned?.marks).toEqual(['right', 'reversed', 'reversed', 'right']);
  });

  it('tells how large a print comes out, not how large its place is', () => {
    // 1500 × 1800 px in a place of 8 × 10 in: 8 in across are 9.6 in high.
    expect(bodyOf().presses[0]?.lines[0]).toBe('8 × 9.6 in, back, 3.5 in below the collar');
  });

  it('has when to stop and what to watch before the first print', async () => {
    const { text } = await pagesOf(bodyOf());
    const places = ['3. Warm up', 'Three spoiled in twenty', 'Watch:', '4. Back picture'].map((words) =>
      text.indexOf(words),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((one, other) => one - other));
  });

  it('counts what is to be watched of money, and names no amount', () => {
    // 3XL is dearer by less than 2XL, which is cautioned with both amounts.
    const charges = [
      { size: '2XL', amount: 2.5 },
      { size: '3XL', amount: 1.5 },
    ];
    const { watch } = bodyOf({ club: clubWith({ 'job.lines.0.upCharges': charges }) });
    const text = watch.map((note) => note.text).join(' ');
    expect(text).toContain('What is said of money (one caution) stands on the docket.');
    expect(text).not.toMatch(/USD|2\.50|1\.50/);
  });

  it('tells a line of several with the first of its stacks', () => {
    const day = ownBlock(EVENING, 8 * 60, 900);
    const { before } = bodyOf(
      { club: club(), other: changed(club(), { 'job.name': 'Garden shirts' }) },
      'a4',
      day,
    );
    const ticks = before[2]?.ticks.map((tick) => tick.replaceAll(/[⁨⁩]/g, '')) ?? [];
    expect(ticks).toHaveLength(12);
    expect([ticks[0], ticks[6]]).toEqual([
      // Both are made of one shirt: spares stand apart.
      'Ramblers Club shirts, Club shirt: L 11',
      'Garden shirts, Club shirt: L 11',
    ]);
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
    // The heads of the squares stand again over each print.
    expect(
      text.match(/size good tick each good one scrap|size good a square: up to 2 good scrap/g)?.length,
    ).toBeGreaterThanOrEqual(2);
    for (const { lines } of pages) expect(lines.some((line) => line.includes('size good'))).toBe(true);
  });
});
