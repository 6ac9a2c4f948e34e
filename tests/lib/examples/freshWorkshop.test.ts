import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { priceJob } from '@/lib/costing/priceJob';
import { newJob } from '@/lib/drafts/newJob';
import { freshWorkshop } from '@/lib/examples/freshWorkshop';
import { regionOf } from '@/lib/examples/regionOf';
import { startingBlank } from '@/lib/examples/startingBlanks';
import { Grid } from '@/lib/grid/evaluateGrid';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { workshopSchema } from '@/shared/schemas/workshop';

const DAY = '2026-11-25';

/** A first job on a shirt in a fresh workshop, with other quantities than the twelve it begins with where told. */
function firstJob(language: string, quantities?: JobInput['job']['lines'][number]['quantities']): JobInput {
  const region = regionOf(language);
  const workshop = freshWorkshop(DAY, region);
  const body = startingBlank('shirt', DAY, region);
  const { job, artwork } = newJob({
    name: 'Job',
    day: DAY,
    workshop,
    blank: { id: 'shirt', body },
    artworkId: 'a',
  });
  const lines = job.lines.map((line) => ({ ...line, quantities: quantities ?? line.quantities }));
  return jobInputSchema.parse({
    asOf: DAY,
    workshop,
    blanks: { shirt: body },
    artworks: { a: artwork },
    job: { ...job, lines },
  });
}

const told = (input: JobInput) =>
  checkJob(input).findings.map(({ id, severity, variant }) => `${id} ${severity} ${variant ?? ''}`.trim());

/** Only the maker can say these. */
const open = [
  'ART-14 caution notStated',
  'REC-12 caution never',
  'RATE-01 caution coverage',
  'RATE-01 caution noFreight',
  'RATE-01 caution noDrive',
  'LAW-05 caution',
  'ART-13 note none',
];

describe('freshWorkshop', () => {
  it.each(['en-US', 'en-GB', 'de-DE', 'ja-JP', 'ar-KW', 'not a tag'])(
    'makes a workshop for %s that reads as it is written',
    (language) => {
      const workshop = freshWorkshop(DAY, regionOf(language));
      expect(workshopSchema.parse(workshop)).toEqual(workshop);
    },
  );

  it.each(['en-US', 'de-DE'])(
    'leaves for %s only the quantities to fill, and what only the maker knows',
    (language) => {
      expect(told(firstJob(language, []))).toEqual(['QTY-02 stop none', ...open]);
    },
  );

  it('gives a price at once, with the twelve pieces a job begins with', () => {
    const input = firstJob('en-US');
    // How near the edge of the paper lies is asked of sizes that are made.
    expect(told(input)).toEqual([...open, 'LAY-05 note']);
    expect(priceJob(input, new Grid()).prices?.targetTotal).toBeGreaterThan(0);
  });

  it('calls every rate typical, of the day it begins', () => {
    const rates = JSON.stringify(firstJob('en-US')).match(/"origin":"\w+"/g);
    expect(new Set(rates)).toEqual(new Set(['"origin":"typical"']));
  });

  it('takes no amount for typical in a currency far from the dollar, and the check asks for each', () => {
    const input = firstJob('ja-JP', [{ size: 'L', quantity: 12 }]);
    const missing = told(input).filter((finding) => finding === 'RATE-01 stop noTypical');
    expect(missing.length).toBeGreaterThan(5);
    expect(input.blanks.shirt?.sizes.map(({ price }) => price)).toEqual(Array(6).fill(null));
  });
});
