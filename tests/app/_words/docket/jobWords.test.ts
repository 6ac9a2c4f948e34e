import { describe, expect, it } from 'vitest';
import { findingCountWords } from '@/app/_words/docket/findingCountWords';
import { jobInWords, namesInWords, wantedDayWords } from '@/app/_words/docket/jobWords';
import { formatterFor } from '@/app/_words/formatter';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import type { Finding } from '@/shared/finding';

const DAY = '2026-11-25';
const club = clubOrder(DAY, '2026-12-11');
const formatter = formatterFor(club.workshop);

describe('jobInWords', () => {
  it('tells whom the job is for and when it is wanted', () => {
    expect(jobInWords(club, formatter)).toBe(
      'for Exampleton Ramblers Club, Alex Placeholder, wanted Friday, December 11',
    );
  });

  it('tells what is made where it is for nobody and wanted on no day', () => {
    expect(jobInWords(fairMugs(DAY), formatter)).toBe('36 mugs made to stock');
  });

  it('calls shirts and mugs together pieces', () => {
    const shirts = fairShirts(DAY);
    const mugs = fairMugs(DAY);
    const both = { ...shirts, job: { ...shirts.job, lines: [...shirts.job.lines, ...mugs.job.lines] } };
    expect(jobInWords(both, formatter)).toBe('132 pieces made to stock');
  });
});

describe('namesInWords', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b', 'c'], 'a, b, and c'],
    [['a', 'b', 'c', 'd', 'e'], 'a, b, and 3 more'],
  ])('%j is “%s”', (names, words) => expect(namesInWords(names)).toBe(words));
});

describe('wantedDayWords', () => {
  it('names the year only where it is another', () => {
    expect(wantedDayWords('2026-12-11', DAY, 'en-GB')).toBe('Friday 11 December');
    expect(wantedDayWords('2027-01-08', DAY, 'en-GB')).toBe('Friday, 8 January 2027');
  });
});

describe('findingCountWords', () => {
  const found = (severity: Finding['severity'], waivedBecause?: string): Finding => ({
    id: 'ART-09',
    severity,
    where: { document: 'job', path: [] },
    found: null,
    limit: null,
    facts: { artwork: 'Crest' },
    fix: null,
    waivable: severity === 'stop',
    ...(waivedBecause === undefined ? {} : { waivedBecause }),
  });

  it.each([
    ['nothing to mend', []],
    ['1 note, no stops', [found('note')]],
    ['2 stops, 1 caution', [found('stop'), found('stop'), found('caution')]],
    ['1 stop passed with a reason, 2 notes', [found('stop', 'known'), found('note'), found('note')]],
  ])('says “%s”', (words, findings) => expect(findingCountWords(findings)).toBe(words));
});
