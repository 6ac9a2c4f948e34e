import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { priceJob } from '@/lib/costing/priceJob';
import { OWN_BLANK_ID, OWN_JOB_ID, ownWorkshop } from '@/lib/examples/ownWorkshop';
import { regionOf } from '@/lib/examples/regionOf';
import { Grid } from '@/lib/grid/evaluateGrid';
import { kinds } from '@/lib/kinds/kinds';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';

const DAY = '2026-11-25';

/** The first job of a new workshop, with some quantities typed in. */
function firstJob(language: string, quantities: JobInput['job']['lines'][number]['quantities']): JobInput {
  const documents = ownWorkshop(DAY, regionOf(language));
  const ofKind = (kind: string) =>
    Object.fromEntries(documents.flatMap(({ id, kind: own, body }) => (own === kind ? [[id, body]] : [])));
  const input = jobInputSchema.parse({
    asOf: DAY,
    workshop: ofKind('workshop').workshop,
    blanks: ofKind('blank'),
    artworks: ofKind('artwork'),
    job: ofKind('job')[OWN_JOB_ID],
  });
  const lines = input.job.lines.map((line) => ({ ...line, quantities }));
  return { ...input, job: { ...input.job, lines } };
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

describe('ownWorkshop', () => {
  it.each(['en-US', 'en-GB', 'de-DE', 'ja-JP', 'ar-KW', 'not a tag'])(
    'makes documents for %s that read as they are written',
    (language) => {
      for (const { kind, body } of ownWorkshop(DAY, regionOf(language))) {
        expect(kinds[kind].schema.parse(body)).toEqual(body);
      }
    },
  );

  it.each(['en-US', 'de-DE'])(
    'leaves for %s only the quantities to fill, and what only the maker knows',
    (language) => {
      expect(told(firstJob(language, []))).toEqual(['QTY-02 stop none', ...open]);
    },
  );

  it('gives a price as soon as a quantity is there', () => {
    const input = firstJob('en-US', [{ size: 'L', quantity: 12 }]);
    // How near the edge of the paper lies is asked of sizes that are made.
    expect(told(input)).toEqual([...open, 'LAY-05 note']);
    expect(priceJob(input, new Grid()).prices?.targetTotal).toBeGreaterThan(0);
  });

  it('calls every rate typical, of the day it begins', () => {
    const rates = JSON.stringify(ownWorkshop(DAY, regionOf('en-US'))).match(/"origin":"\w+"/g);
    expect(new Set(rates)).toEqual(new Set(['"origin":"typical"']));
  });

  it('takes no amount for typical in a currency far from the dollar, and the check asks for each', () => {
    const input = firstJob('ja-JP', [{ size: 'L', quantity: 12 }]);
    const missing = told(input).filter((finding) => finding === 'RATE-01 stop noTypical');
    expect(missing.length).toBeGreaterThan(5);
    expect(input.blanks[OWN_BLANK_ID]?.sizes.map(({ price }) => price)).toEqual(Array(6).fill(null));
  });
});
