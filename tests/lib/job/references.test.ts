import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { clubWith, mended, told, verdict } from '@/tests/fixtures/clubJob';

describe('DOC-02 stops at a name that leads nowhere', () => {
  it.each([
    ['job.printerId', 'printer'],
    ['job.sheetId', 'sheet'],
    ['job.channelId', 'channel'],
    ['job.lines.0.blankId', 'blank'],
    ['job.lines.0.packagingId', 'packaging'],
    ['job.lines.0.placements.1.artworkId', 'artwork'],
    ['job.lines.0.placements.1.pressId', 'press'],
    // Names that every object has by birth are no documents.
    ['job.lines.0.blankId', 'blank', 'constructor'],
  ])('%s: %s', (path, kind, name = 'gone') => {
    const input = clubWith({ [path]: name });
    const [finding, ...others] = told(input, 'DOC-02');
    expect(others).toEqual([]);
    expect(finding?.facts).toMatchObject({ kind, id: name });
    expect(finding?.waivable).toBe(false);
    expect(checkJob(input)).toMatchObject({ checked: null, resolved: null });
  });

  it('names all that are missing at once', () => {
    const input = clubWith({ 'job.printerId': 'gone', 'job.lines.0.placements.0.artworkId': 'gone' });
    expect(told(input, 'DOC-02')).toHaveLength(2);
  });

  it('offers the only one there is', () => {
    const input = clubWith({ 'job.printerId': 'gone' });
    const after = mended(input, told(input, 'DOC-02')[0]);
    expect(after.job.printerId).toBe('desk-printer');
    expect(verdict(after, 'DOC-02')).toBe('pass');
  });

  it('offers nothing where two could be meant', () => {
    expect(told(clubWith({ 'job.channelId': 'gone' }), 'DOC-02')[0]?.fix).toBeNull();
  });
});

describe('DOC-01 stops where two things go by one name', () => {
  const { workshop, job, blanks } = clubWith({});
  const [line] = job.lines;
  const placements = line?.placements ?? [];
  const sizes = blanks['white-shirt']?.sizes ?? [];

  it.each([
    ['presses', { 'workshop.presses': [...workshop.presses, workshop.presses[0]] }],
    ['sizes of a blank', { 'blank:white-shirt.sizes': [...sizes, sizes[0]] }],
    [
      'sizes of a line',
      { 'job.lines.0.quantities': [...(line?.quantities ?? []), { size: 'L', quantity: 1 }] },
    ],
    ['up-charges', { 'job.lines.0.upCharges': [...(line?.upCharges ?? []), { size: '2XL', amount: 1 }] }],
    ['lines and their placements', { 'job.lines': [line, line] }],
    ['placements', { 'job.lines.0.placements': [...placements, placements[0]] }],
    [
      'prints for one size',
      {
        'job.lines.0.placements.0.prints': [
          { sizes: ['L', 'L'], widthMm: 100, heightMm: 100 },
          { sizes: null, widthMm: 100, heightMm: 100 },
        ],
      },
    ],
    [
      'prints for all other sizes',
      {
        'job.lines.0.placements.0.prints': [
          { sizes: null, widthMm: 100, heightMm: 100 },
          { sizes: null, widthMm: 90, heightMm: 90 },
        ],
      },
    ],
  ])('%s', (_, fields) => {
    const input = clubWith(fields);
    expect(verdict(input, 'DOC-01')).toBe('stop repeated');
    expect(checkJob(input).checked).toBeNull();
  });

  it('lets one artwork serve two placements, and a job’s own row replace the workshop’s', () => {
    const row = {
      id: 'own_licence',
      label: 'Licence',
      outOfPocket: true,
      cost: { kind: 'formula', formula: '1' },
    };
    const input = clubWith({
      'job.lines.0.placements.1.artworkId': 'hill-path',
      'workshop.ownRows': [row],
      'job.ownRows': [{ ...row, label: 'Licence of the club' }],
    });
    expect(verdict(input, 'DOC-01')).toBe('pass');
    expect(checkJob(input).resolved?.ownRows.map(({ label }) => label)).toEqual(['Licence of the club']);
  });
});
