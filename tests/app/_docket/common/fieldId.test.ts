import { describe, expect, it } from 'vitest';
import { isHeldBy } from '@/app/_controls/reveal';
import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { clubOrder } from '@/lib/examples/clubOrder';

const { job } = clubOrder('2026-11-25', '2026-12-11');

describe('fieldIdOf', () => {
  it('names the field of the job a finding points at', () => {
    expect(fieldIdOf({ document: 'job', path: ['lines', 0, 'orderedQuantity'] }, job)).toBe(
      'job-lines-0-orderedQuantity',
    );
  });

  it('finds an artwork in the placement the finding names', () => {
    const where = { document: 'artwork', id: 'club-crest', path: ['rights'], placementId: 'badge' } as const;
    expect(fieldIdOf(where, job)).toBe('job-lines-0-placements-1-artwork-rights');
  });

  it('finds an artwork in the first placement that shows it where none is named', () => {
    const where = { document: 'artwork', id: 'hill-path', path: ['coverage'] } as const;
    expect(fieldIdOf(where, job)).toBe('job-lines-0-placements-0-artwork-coverage');
  });

  it.each(['workshop', 'blank', 'request'] as const)('has no field of the %s', (document) => {
    expect(fieldIdOf({ document, id: 'x', path: ['name'] }, job)).toBeNull();
  });
});

describe('isHeldBy', () => {
  it.each([
    ['job-lines-1-name', 'job-lines-1', true],
    ['job-lines-1', 'job-lines-1', true],
    ['job-lines-11-name', 'job-lines-1', false],
    [null, 'job-lines-1', false],
  ])('%s under %s: %s', (id, fieldId, expected) => {
    expect(isHeldBy(id, [fieldId])).toBe(expected);
  });
});
