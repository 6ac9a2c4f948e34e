import { describe, expect, it } from 'vitest';
import { isAsBegun } from '@/lib/drafts/isAsBegun';
import { jobWithBlank } from '@/lib/drafts/jobWithBlank';
import { newJob } from '@/lib/drafts/newJob';
import { scaledJob } from '@/lib/drafts/scaledJob';
import type { Job, Line } from '@/shared/schemas/job';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { club, mugs, TODAY } from '@/tests/fixtures/clubJob';

const { workshop } = club();
const blanks = { ...club().blanks, ...mugs().blanks };
const blankOf = (id: string) => {
  const body = blanks[id];
  if (body === undefined) throw new Error(`no blank ${id}`);
  return { id, body };
};
const shirt = blankOf(Object.keys(club().blanks)[0] ?? '');
const mug = blankOf(Object.keys(mugs().blanks)[0] ?? '');

const begun = (): JobInput => {
  const { job, artwork } = newJob({ name: 'Caps', day: TODAY, workshop, blank: shirt, artworkId: 'first' });
  return jobInputSchema.parse({ asOf: TODAY, workshop, blanks, artworks: { first: artwork }, job });
};
const withJob = (to: (job: Job) => Job): JobInput => ({ ...begun(), job: to(begun().job) });
const withLine = (to: Partial<Line>): JobInput =>
  withJob((job) => ({ ...job, lines: job.lines.map((line) => ({ ...line, ...to })) }));

describe('a job is as it began', () => {
  it('before anybody chose anything of it', () => {
    expect(isAsBegun(begun())).toBe(true);
  });

  it('also for as many pieces as were asked for, on another day, under another name', () => {
    expect(isAsBegun(withJob((job) => scaledJob(job, 40)))).toBe(true);
    expect(isAsBegun({ ...begun(), asOf: '2026-12-20' })).toBe(true);
    expect(isAsBegun(withJob((job) => ({ ...job, name: 'Ramblers', customer: 'Club' })))).toBe(true);
  });

  it('also on another blank, whose sizes and print nobody chose', () => {
    const to = { lineId: 'line-1', from: shirt.body, to: mug, workshop, day: TODAY };
    expect(isAsBegun(withJob((job) => jobWithBlank(job, to)))).toBe(true);
  });

  it.each<[string, Partial<Line>]>([
    ['its sizes', { quantities: [{ size: 'L', quantity: 12 }] }],
    ['its price', { askedPrice: 12 }],
    ['its name', { name: 'Cap' }],
    ['names of pieces', { nameList: 'Ana' }],
  ])('no more once somebody chose %s', (_, to) => {
    expect(isAsBegun(withLine(to))).toBe(false);
  });

  it('no more once somebody chose the print or its size', () => {
    const withPrint = (change: object) =>
      withJob((job) => ({
        ...job,
        lines: job.lines.map((line) => ({
          ...line,
          placements: line.placements.map((one) => ({ ...one, ...change })),
        })),
      }));
    expect(isAsBegun(withPrint({}))).toBe(true);
    expect(isAsBegun(withPrint({ name: 'Crest' }))).toBe(false);
    expect(isAsBegun(withPrint({ prints: [{ sizes: null, widthMm: 90, heightMm: 90 }] }))).toBe(false);
    const input = begun();
    const artworks = { first: { ...input.artworks.first, name: 'Club crest' } };
    expect(isAsBegun(jobInputSchema.parse({ ...input, artworks }))).toBe(false);
  });

  it('never where it is the example, or has no piece in it', () => {
    expect(isAsBegun(club())).toBe(false);
    expect(isAsBegun(withLine({ quantities: [] }))).toBe(false);
  });
});
