import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { neverWaived } from '@/shared/tables/thresholds';
import { clubWith, told } from '@/tests/fixtures/clubJob';

const reason = 'Vintage look agreed in writing.';
const faded = {
  'blank:white-shirt.fibres': [
    { fibre: 'polyester', share: 0.6 },
    { fibre: 'cotton', share: 0.4 },
  ],
};

describe('a stop passes with a reason', () => {
  it.each([
    ['for the whole job', null, null, true],
    ['for its line', null, 'shirts', true],
    ['for another line', null, 'mugs', false],
    ['for a placement it does not speak of', 'back', null, false],
  ])('%s', (_, placementId, lineId, passes) => {
    const waiver = { finding: 'SUB-01', placementId, lineId, reason };
    const input = clubWith({ ...faded, 'job.waivers': [waiver] });
    expect(told(input, 'SUB-01')[0]?.waivedBecause).toBe(passes ? reason : undefined);
    expect(checkJob(input).checked !== null).toBe(passes);
  });

  it('stays listed as a stop, with the reason on it', () => {
    const waiver = { finding: 'SUB-01', placementId: null, lineId: null, reason };
    const [first] = checkJob(clubWith({ ...faded, 'job.waivers': [waiver] })).findings;
    expect(first).toMatchObject({ id: 'SUB-01', severity: 'stop', waivedBecause: reason });
  });

  it('not with a reason for another rule', () => {
    const waiver = { finding: 'SUB-04', placementId: null, lineId: null, reason };
    expect(checkJob(clubWith({ ...faded, 'job.waivers': [waiver] })).checked).toBeNull();
  });

  it('not under half polyester: only the band above is a matter of looks', () => {
    const waiver = { finding: 'SUB-01', placementId: null, lineId: null, reason };
    const input = clubWith({
      'blank:white-shirt.fibres': [
        { fibre: 'polyester', share: 0.4 },
        { fibre: 'cotton', share: 0.6 },
      ],
      'job.waivers': [waiver],
    });
    expect(checkJob(input).checked).toBeNull();
  });
});

it('some rules are never waived', () => {
  expect(neverWaived).toEqual(
    expect.arrayContaining([
      'QTY-01',
      'QTY-02',
      'QTY-04',
      'RATE-01',
      'RATE-06',
      'REC-04',
      'LAY-01',
      'SUB-09',
    ]),
  );
});
