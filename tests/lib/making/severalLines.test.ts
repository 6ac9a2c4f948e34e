import { describe, expect, it } from 'vitest';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import { standardFor } from '@/lib/making/standard/standardFor';
import { standardWork } from '@/lib/making/standard/standardWork';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';
import { club } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

/** Shirts with a back picture and a badge, and shirts with a badge alone; nothing that is spent once differs. */
function twoLines(both: number, badgeOnly: number): JobInput {
  const input = club();
  const [line] = input.job.lines;
  if (line === undefined) throw new Error('no line');
  const of = (id: string, quantity: number, placements: typeof line.placements) => ({
    ...{ ...line, id, placements, upCharges: [], quantities: [{ size: 'M', quantity }] },
  });
  const badge = line.placements.slice(1).map((one) => ({ ...one, id: 'badge-alone' }));
  const lines = [
    of('both', both, line.placements),
    ...(badgeOnly > 0 ? [of('badge-only', badgeOnly, badge)] : []),
  ];
  return { ...input, job: { ...input.job, lines } };
}

function standardOf(input: JobInput): RunStandard {
  const job = { work: { jobId: 'job', orderId: null, stallDayId: null }, input, costed: costed(input) };
  const work = standardWork(job, blanksOfRun([job], 'expected'));
  return {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: input.asOf, runId: 'run', title: 'Run' },
    ...{ currency: 'USD', cover: 'expected', works: [work], sizes: [], clock: [] },
  };
}

function made(standard: RunStandard, both: number, badgeOnly: number): StandardWork {
  const good = { jobId: 'job', size: 'M' };
  const [work] = standardFor(standard, [
    { ...good, lineId: 'both', good: both },
    { ...good, lineId: 'badge-only', good: badgeOnly },
  ]).works;
  if (work === undefined) throw new Error('no work');
  return work;
}

const minutesOf = ({ labour: { elements } }: StandardWork, element: string) =>
  elements.find((one) => one.element === element)?.minutes ?? 0;

describe('the standard of 40 shirts with back and badge and 40 with the badge alone', () => {
  const standard = standardOf(twoLines(40, 40));

  it('takes the sheets of the first line alone where of the second none was made', () => {
    // Two tests; 40 ÷ (0.965 · 0.98) backs, a sheet each; ten sheets of four badges and a sheet for each of 40 ÷ 0.98 − 40
    // spoiled; of all 2 % are rejected: 2 + (42.2967 + 10 + 0.8163) ÷ 0.98.
    const work = made(standard, 40, 0);
    expect(work.sheets.quantity).toBeCloseTo(2 + (40 / (0.965 * 0.98) + 10 + 40 / 0.98 - 40) / 0.98, 9);
    expect(work.sheets.quantity).toBeCloseTo(56.197, 3);
    // 40 at 1.20; (42.2967 + 2) · 2.4 + 40.8163 · 2.1.
    expect(minutesOf(work, 'finish')).toBeCloseTo(48, 9);
    expect(minutesOf(work, 'presses')).toBeCloseTo(192.026, 3);
    // 80 in² · 1.1 and 12.25 in² · 1.4, at 0.0065 · 1.1: 0.6292 and 0.1226 mL a print; two tests, and 4 mL of a session.
    expect(work.ink.mL).toBeCloseTo((42.2967 * 0.6292 + 40.8163 * 0.1226225) / 0.98 + 1.2584 + 4, 3);
  });

  it.each([
    [36, 20],
    [20, 44],
    [40, 4],
    [80, 8],
  ])('is what a job of %s and %s costs, for whole sheets of four badges', (both, badgeOnly) => {
    const flexed = made(standard, both, badgeOnly);
    const [asked] = standardOf(twoLines(both, badgeOnly)).works;
    if (asked === undefined) throw new Error('no work');
    const sums = ({ sheets, ink, labour, otherCost, reprints, fees, revenue, fullCost }: StandardWork) => [
      ...[sheets.quantity, ink.mL, labour.minutes, otherCost, reprints, fees, revenue ?? 0, fullCost],
      ...labour.elements.map(({ minutes }) => minutes),
    ];
    expect(sums(flexed)).toEqual(sums(asked).map((one) => expect.closeTo(one, 9)));
  });

  it('costs without the second line what a job of the first alone does', () => {
    const [alone] = standardOf(twoLines(40, 0)).works;
    expect(made(standard, 40, 0).fullCost).toBeCloseTo(alone?.fullCost ?? Number.NaN, 9);
  });
});

describe('what of a piece was bought', () => {
  it('is blank, paper, ink, tape, power and bag; no pay, overhead or wear', () => {
    const [work] = standardOf(twoLines(40, 40)).works;
    const bought = work?.lines.flatMap(({ sizes }) => sizes.map(({ takes }) => takes.boughtIn)) ?? [];
    // Of a badge alone: 4.60 ÷ 0.98 ÷ 0.99 = 4.7413; (0.25 + 0.0204) ÷ 0.98 sheets at 0.14 = 0.0386; 1.0204 · 0.1226 ÷ 0.98
    // mL at 0.16 = 0.0204; 1.0204 · 0.065 = 0.0663; 1.0204 · 1.4 · 0.4 · 2.1 ÷ 60 kWh and 0.2759 · 0.015 · 2.5 ÷ 60 of the
    // printer at 0.18 = 0.0036; a bag at 0.15.
    expect(bought[1]).toBeCloseTo(4.7413 + 0.0386 + 0.0204 + 0.0663 + 0.0036 + 0.15, 3);
    // With a back: as of the worked run, whose badges take ten sheets for 37; here a quarter each.
    const fewer = ((10 / 37 - 0.25) / 0.98) * (0.14 + ((0.015 * 2.5) / 60) * 0.18);
    expect(bought[0]).toBeCloseTo(4.6 / (0.965 * 0.98 * 0.99) + 0.614716 - fewer, 5);
  });
});
