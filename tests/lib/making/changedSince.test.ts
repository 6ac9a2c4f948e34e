import { expect, it } from 'vitest';
import { changedSince } from '@/lib/making/list/changedSince';
import { jobDigest } from '@/lib/making/standard/jobDigest';
import { changed, club } from '@/tests/fixtures/clubJob';
import { clubStandard } from '@/tests/fixtures/clubStandard';

/** The worked run, frozen of the job as its fixture has it: blanks, prints and recipes of both are alike. */
const frozen = () => {
  const { works, ...rest } = clubStandard();
  const { job } = club();
  return {
    ...rest,
    works: works.map((work) => ({
      ...work,
      sha256: jobDigest(club()),
      lines: work.lines.map((line, at) => ({
        ...line,
        lineId: job.lines[at]?.id ?? '',
        blankId: job.lines[at]?.blankId ?? '',
        placements: line.placements.map((print, slot) => {
          const now = job.lines[at]?.placements[slot];
          if (now === undefined) throw new Error('the job has both prints');
          const { id: placementId, artworkId, position, recipe } = now;
          return { ...print, placementId, artworkId, position, recipe };
        }),
      })),
    })),
  };
};
const since = (changes: Parameters<typeof changed>[1]) =>
  changedSince(frozen(), () => changed(club(), changes));

it('says nothing of a job that is as it was, or of a run that has not begun', () => {
  expect(changedSince(frozen(), () => club())).toEqual([]);
  expect(changedSince(null, () => null)).toEqual([]);
  expect(since({ 'job.state': 'agreed' })).toEqual([]);
});

it.each([
  [{ 'job.lines.0.quantities.0.quantity': 5 }, ['pieces']],
  [{ 'job.lines.0.placements.0.recipe.dwellSeconds': 60 }, ['recipe']],
  [{ 'job.lines.0.placements.1.position': 'rightChest' }, ['prints']],
  [{ 'workshop.rates.wage.value': 19 }, []],
  [{ 'job.lines.0.askedPrice': 20 }, []],
])('names what the standard holds of it: %o', (changes, parts) => {
  expect(since(changes)).toEqual([{ name: 'Ramblers Club shirts', isGone: false, parts }]);
});

it('names a job whose pieces are all gone, and one that is removed, as it was called then', () => {
  const { quantities } = club().job.lines[0] ?? { quantities: [] };
  const none = Object.fromEntries(quantities.map((_, at) => [`job.lines.0.quantities.${at}.quantity`, 0]));
  expect(since(none)).toMatchObject([{ isGone: false, parts: ['pieces'] }]);
  expect(changedSince(frozen(), () => null)).toEqual([
    { name: 'Ramblers Club shirts', isGone: true, parts: [] },
  ]);
});
