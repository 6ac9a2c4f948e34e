import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { newJob } from '@/lib/drafts/newJob';
import { clubOrder } from '@/lib/examples/clubOrder';
import { jobSchema } from '@/shared/schemas/job';

const DAY = '2026-11-25';
const { workshop, blanks } = clubOrder(DAY, '2026-12-11');
const mug = blanks['white-mug'] ?? null;

const bare = { ...workshop, printers: [], presses: [], sheets: [], channels: [], packagings: [] };

describe('newJob', () => {
  it('takes the first machines of the workshop and the press that takes the blank', () => {
    const blank = mug === null ? null : { id: 'white-mug', body: mug };
    const { job } = newJob({ name: 'Mugs', day: DAY, workshop, blank, artworkId: 'a' });
    expect(job).toMatchObject({ printerId: 'desk-printer', sheetId: 'letter', channelId: 'own-orders' });
    expect(job.lines[0]?.placements[0]).toMatchObject({ pressId: 'mug-press', position: 'wrap' });
    expect(jobSchema.parse(job)).toEqual(job);
  });

  it('begins with the scrap that was measured for its press and place, and typical elsewhere', () => {
    const blank = mug === null ? null : { id: 'white-mug', body: mug };
    const measured = {
      ...{ value: 0.0412, unit: 'share' as const, date: DAY, origin: 'measured' as const, count: 41 },
    };
    const scrapOf = (press: string) =>
      newJob({
        ...{ name: 'Mugs', day: DAY, workshop, blank, artworkId: 'a' },
        measuredScrap: (pressId, position) => (pressId === press && position === 'wrap' ? measured : null),
      }).job.lines[0]?.placements[0]?.scrap;
    expect(scrapOf('mug-press')).toEqual(measured);
    expect(scrapOf('other')?.origin).toBe('typical');
  });

  it('can be begun in a workshop that has nothing; the check tells each thing that is not there', () => {
    const { job, artwork } = newJob({ name: 'Job', day: DAY, workshop: bare, blank: null, artworkId: 'a' });
    expect(jobSchema.parse(job)).toEqual(job);
    const { findings } = checkJob({
      asOf: DAY,
      workshop: bare,
      blanks: {},
      artworks: { a: artwork },
      job,
      onHand: {},
      approvedVersions: {},
    });
    const missing = findings.flatMap((one) => (one.id === 'DOC-02' ? [one.facts.kind] : []));
    expect(missing.toSorted()).toEqual(['blank', 'channel', 'press', 'printer', 'sheet']);
  });
});
