import { describe, expect, it } from 'vitest';
import { type JobAnswer, priceJob } from '@/lib/costing/priceJob';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { isStanding } from '@/shared/finding';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const example = (file: string): JobInput => {
  const input = exampleFiles()[file];
  if (input === undefined) throw new ReferenceError(`there is no example ${file}`);
  return input;
};
const answerTo = (input: JobInput): JobAnswer => priceJob(jobInputSchema.parse(input), grid);
const stopsOf = ({ findings }: JobAnswer) => findings.filter(isStanding).map(({ id }) => id);

describe('the whole way of the club order', () => {
  const answer = answerTo(example('club-order.json'));

  it('meets no stop', () => expect(stopsOf(answer)).toEqual([]));

  it('comes to 411.79, to a target of 602.05 and to 288.37 of profit at 711.50', () => {
    expect(answer.costSheet?.fullCost.toFixed(2)).toBe('411.79');
    expect(answer.prices?.targetTotal.toFixed(2)).toBe('602.05');
    expect(answer.prices?.total.toFixed(2)).toBe('711.50');
    expect(answer.prices?.profit.toFixed(2)).toBe('288.37');
  });

  it('has a price for six sizes at the six breaks of its list', () => {
    expect(answer.prices?.lists[0]?.breaks).toHaveLength(6);
    expect(answer.prices?.table).toHaveLength(36);
  });

  it('is the same the second time, and without its documents being touched', () => {
    const input = example('club-order.json');
    const before = structuredClone(input);
    expect(answerTo(input)).toEqual(answer);
    expect(input).toEqual(before);
  });
});

describe.each(Object.keys(exampleFiles()))('%s', (file) => {
  it('survives JSON on its way there and back', () => {
    const answer = answerTo(example(file));
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
});

describe('a job with a stop has no sums', () => {
  const formulaRow = (formula: string) => ({
    'job.ownRows': [{ id: 'own_row', label: 'Own', outOfPocket: false, cost: { kind: 'formula', formula } }],
  });

  it.each<[string, Readonly<Record<string, unknown>>, string]>([
    ['a missing wage', { 'workshop.rates.wage': null }, 'RATE-01'],
    ['a formula that cannot be read', formulaRow('blankPrice *'), 'ROW-01'],
    ['a formula that leads back to itself', formulaRow('fullCost'), 'ROW-02'],
    ['a formula that comes out as an error', formulaRow('1 / (blankPrice - blankPrice)'), 'ROW-03'],
  ])('%s', (_, fields, id) => {
    const answer = answerTo(clubWith(fields));
    expect(stopsOf(answer)).toContain(id);
    expect([answer.costSheet, answer.prices]).toEqual([null, null]);
  });
});

describe('a job that asks for what cannot be is told so', () => {
  const rate = (value: number, unit: string) => ({ value, unit, date: '2026-11-25', origin: 'yours' });

  it.each<[string, Readonly<Record<string, unknown>>, string]>([
    [
      'a price that its up-charge takes below nothing',
      { 'job.lines.0.upCharges': [{ size: 'M', amount: -20 }] },
      'RATE-08',
    ],
    [
      'a press that will fetch more than it cost',
      { 'workshop.presses.0.resale': rate(4800, 'money') },
      'RATE-03',
    ],
    ['a sum beyond the largest amount', { 'workshop.rates.wage': rate(1e9, 'money/h') }, 'RATE-03'],
  ])('%s', (_, fields, id) => {
    const answer = answerTo(clubWith(fields));
    expect(stopsOf(answer)).toContain(id);
    expect(answer.prices).toBeNull();
  });
});
