// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { JobSheet } from '@/app/_docket/jobSheet/JobSheet';
import { sheetSources } from '@/app/_docket/jobSheet/sheetSources';
import type { PaperQuestion, PaperReply } from '@/app/_papers/messages';
import { priceJob } from '@/lib/costing/priceJob';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const asked = vi.hoisted(() => ({ papers: [] as PaperQuestion[] }));
vi.mock('@/app/_papers/writePaper', () => ({
  writePaper: (question: PaperQuestion, onNews: (news: PaperReply) => void) => {
    asked.papers.push(question);
    const kind = question.kind === 'paper' ? question.source.kind : '';
    queueMicrotask(() =>
      act(() => onNews({ kind: 'written', file: new Blob([kind]), pages: 1, lost: [], missing: [] })),
    );
    return () => undefined;
  },
}));
const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveBlob', async (original) => ({
  ...(await original<typeof import('@/app/_files/saveBlob')>()),
  saveBlob: saved,
}));

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  asked.papers = [];
  saved.mockClear();
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const noFile = async () => null;

const show = (input: JobInput) =>
  render(
    <JobSheet input={input} answer={priceJob(input, grid)} readFile={noFile} context={input.workshop} />,
  );

const part = (name: string) => screen.getByRole('region', { name });

/** What a page says, typed names without what keeps their direction. */
const plain = (element: HTMLElement) => (element.textContent ?? '').replaceAll(/[\u2068\u2069]/g, '');

it('a job has a sheet for the bench without money, and one of costs that is the owner’s', () => {
  show(club());
  const bench = plain(within(part('For the bench')).getByRole('article'));
  for (const told of [
    'Print 53 sheets',
    'Letter sheet; 2 h 27 min, unattended',
    'mirrored on paper',
    'back, as seen',
    '45 in all, 8 spares; 79 % sure that no size runs out',
  ])
    expect(bench).toContain(told);
  expect(bench).not.toMatch(/USD|margin|profit/i);
  // The worked example's own figures.
  expect(plain(part('For you alone'))).toMatch(/411\.79.*288\.37.*40\.5 %/);
});

it('each of the two is saved as a file of its own, made before it is asked for', async () => {
  show(club());
  for (const [name, file, kind] of [
    ['Save as PDF of the job sheet', 'Job sheet', 'jobSheet'],
    ['Save as PDF of the costs', 'For you alone', 'ownSheet'],
  ] as const) {
    const save = screen.getByRole('button', { name });
    await waitFor(() => expect(save).not.toHaveAttribute('aria-disabled'));
    await userEvent.click(save);
    const [as, content] = saved.mock.calls.at(-1) ?? [];
    expect(as).toContain(file);
    expect(as).toMatch(/Ramblers Club shirts\.pdf$/);
    expect(await content?.text()).toBe(kind);
  }
});

it('a stop that was passed stands on the sheet with its reason', () => {
  const answer = priceJob(club(), grid);
  const [first] = answer.findings;
  if (first === undefined) throw new Error('the example has findings');
  const passed = { ...first, severity: 'stop' as const, waivedBecause: 'the customer saw a sample' };
  const input = club();
  render(
    <JobSheet
      input={input}
      answer={{ ...answer, findings: [passed] }}
      readFile={noFile}
      context={input.workshop}
    />,
  );
  expect(plain(part('For the bench'))).toMatch(/Passed by you: .*Reason: “the customer saw a sample”/);
});

it('a stopped job has no plan to press by, says what stops it, and is no file', () => {
  show(clubWith({ 'job.printerId': 'gone' }));
  const sheet = part('Not to be made yet');
  expect(sheet).toHaveTextContent('There is no job sheet while a stop stands');
  expect(sheet).toHaveTextContent('The job names a printer that was removed');
  expect(screen.queryByRole('region', { name: 'For you alone' })).not.toBeInTheDocument();
  expect(screen.queryByRole('button', { name: /^Save/ })).not.toBeInTheDocument();
});

it.each([
  ['club', club(), ['37 of Back picture, 1 a sheet', '8 × 9.6 in', '390 °F · 55 s', 'XL 10']],
  ['mugs', fairMugs(TODAY), ['Fern mug', 'Otter mug', 'Star Map mug', 'Every print: 380 °F · 210 s']],
  // Plain shirts of a size serve every design: S 14, M 27, L 32, XL 21, 2XL 8, 3XL 5 are the cheapest 75 %, by trying all.
  // Fern wants 30; the spares, 14 − 12 of S and so on, are told once for all four.
  [
    'shirts',
    fairShirts(TODAY),
    ['Fern shirt 4 8 9 6 2 1 30', 'S +2 M +2 L +3 XL +2 2XL +1 3XL +1', '107 in all, 11 spares'],
  ],
] as const)(
  'the files of %s have one page each on both papers, the bench’s without money',
  async (_, job, told) => {
    for (const page of ['a4', 'letter'] as const) {
      const input = changed(job, { 'workshop.papers.page': page });
      const sources = sheetSources(input, priceJob(input, grid), input.workshop);
      if (sources === null) throw new Error('the example has no stop');
      const bench = await readPages((await writtenPaper(sources.bench)).bytes);
      const owner = await readPages((await writtenPaper(sources.owner)).bytes);
      const size = page === 'a4' ? [595, 842] : [612, 792];
      for (const { pages } of [bench, owner])
        expect(pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toEqual([size]);
      for (const words of [...told, 'Check, fold, pack', 'good / scrapped, and why', 'packed by, date'])
        expect(bench.text).toContain(words);
      expect(bench.text).not.toMatch(/\d\.\d\d\b(?! in)|USD|margin|profit|full cost/i);
      expect(owner.text).toMatch(/Full cost \d/);
    }
  },
);

it('the paper of a job is that of its workshop’s settings, else that of its place', () => {
  const pageOf = (input: JobInput) => sheetSources(input, priceJob(input, grid), input.workshop)?.bench.body;
  expect(pageOf(club())).toMatchObject({ page: 'letter' });
  expect(pageOf(changed(club(), { 'workshop.locale': 'en-GB' }))).toMatchObject({ page: 'a4' });
  expect(pageOf(changed(club(), { 'workshop.papers.page': 'a4' }))).toMatchObject({ page: 'a4' });
});
