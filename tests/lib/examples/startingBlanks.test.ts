import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { newJob } from '@/lib/drafts/newJob';
import { startingBlankNames } from '@/lib/examples/blankPatterns';
import { freshWorkshop } from '@/lib/examples/freshWorkshop';
import { regionOf } from '@/lib/examples/regionOf';
import { startingBlank } from '@/lib/examples/startingBlanks';
import { blankSchema } from '@/shared/schemas/blank';

const DAY = '2026-11-25';

describe.each(startingBlankNames)('the starting %s', (name) => {
  it.each(['en-US', 'de-DE'])('reads as it is written, for %s', (language) => {
    const blank = startingBlank(name, DAY, regionOf(language));
    expect(blankSchema.parse(blank)).toEqual(blank);
  });

  it.each(['en-US', 'de-DE'])(
    'makes a new job that no print, sheet or cloth rule stops, for %s',
    (language) => {
      const region = regionOf(language);
      const workshop = freshWorkshop(DAY, region);
      const body = startingBlank(name, DAY, region);
      const { job, artwork } = newJob({
        name: 'Job',
        day: DAY,
        workshop,
        blank: { id: 'b', body },
        artworkId: 'a',
      });
      const quantities = body.sizes.map(({ name: size }) => ({ size, quantity: 5 }));
      const filled = { ...job, lines: job.lines.map((line) => ({ ...line, quantities })) };
      const { findings } = checkJob({
        asOf: DAY,
        workshop,
        blanks: { b: body },
        artworks: { a: artwork },
        job: filled,
        onHand: {},
        approvedVersions: {},
      });
      // The workshop has a flat press only, so what is round is told to be on the wrong one.
      const stops = findings.filter(({ severity }) => severity === 'stop').map(({ id }) => id);
      expect(stops).toEqual(name === 'mug' || name === 'tumbler' ? ['PLC-09'] : []);
      expect(findings.map(({ id }) => id)).not.toContain('PLC-01');
      expect(findings.map(({ id }) => id)).not.toContain('LAY-04');
    },
  );
});
