import { describe, expect, it } from 'vitest';
import { pressSequence } from '@/lib/making/sequence/pressSequence';
import { sizeOrder } from '@/lib/making/sequence/sizeOrder';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { club } from '@/tests/fixtures/clubJob';
import { jobsOf, runAsked } from '@/tests/fixtures/clubRun';

const [shirts] = club().job.lines;
const [back, badge] = shirts?.placements ?? [];
if (shirts === undefined || back === undefined || badge === undefined)
  throw new Error('the example has changed');
const { recipe } = badge;

/** The club's job with other lines, each of six shirts. */
const withLines = (...lines: readonly Partial<Line>[]): JobInput => ({
  ...club(),
  job: {
    ...club().job,
    lines: lines.map((line, at) => ({
      ...shirts,
      id: `line-${at}`,
      name: `Line ${at}`,
      quantities: [{ size: 'M', quantity: 6 }],
      ...line,
    })),
  },
});

const order = (inputs: Readonly<Record<string, JobInput>>) =>
  pressSequence(jobsOf(runAsked({}, inputs))).map(({ jobId, lineId, name }) => `${jobId} ${lineId} ${name}`);

const light = { ...back, id: 'light', name: 'Light', artworkId: 'hill-path' };
const heavy = { ...badge, id: 'heavy', name: 'Heavy', artworkId: 'club-crest' };
const hot = (placement: typeof badge, celsius: number) => ({
  ...placement,
  recipe: { ...recipe, temperature: { value: celsius, unit: 'C' as const } },
});

describe('the order in which prints are pressed', () => {
  it('is the press order of the job where there is one line', () => {
    const turns = pressSequence(jobsOf(runAsked()));
    expect(turns.map(({ name, slot, sameSetting }) => [name, slot, sameSetting])).toEqual([
      ['Back picture', 0, false],
      ['Chest badge', 1, true],
    ]);
  });

  it('has light ink before heavy: 110 % before 140 %', () => {
    const both = { a: withLines({ placements: [heavy] }), b: withLines({ placements: [light] }) };
    expect(order(both)).toEqual(['b line-0 Light', 'a line-0 Heavy']);
  });

  it('has what is wanted sooner first, where ink and recipe are alike and only there', () => {
    const on = (wantedOn: string | null, placement: typeof badge): JobInput => {
      const input = withLines({ placements: [placement] });
      return { ...input, job: { ...input.job, wantedOn } };
    };
    const alike = { a: on(null, light), b: on('2027-01-08', light), c: on('2027-01-07', light) };
    expect(order(alike)).toEqual(['c line-0 Light', 'b line-0 Light', 'a line-0 Light']);
    expect(order({ a: on('2027-01-07', heavy), b: on(null, light) })).toEqual([
      'b line-0 Light',
      'a line-0 Heavy',
    ]);
  });

  it('keeps one recipe together before it looks at the ink', () => {
    const three = {
      a: withLines({ placements: [light] }),
      b: withLines({ placements: [hot(heavy, 195)] }),
      c: withLines({ placements: [heavy] }),
    };
    expect(order(three)).toEqual(['a line-0 Light', 'c line-0 Heavy', 'b line-0 Heavy']);
  });

  it('takes 390 °F and 199 °C for one setting', () => {
    const two = { a: withLines({ placements: [light] }), b: withLines({ placements: [hot(heavy, 199)] }) };
    expect(pressSequence(jobsOf(runAsked({}, two))).map(({ sameSetting }) => sameSetting)).toEqual([
      false,
      true,
    ]);
  });

  it('has what is pressed on one side first', () => {
    const two = withLines({ placements: [light, heavy] }, { placements: [{ ...heavy, id: 'alone' }] });
    expect(order({ a: two })).toEqual(['a line-1 Heavy', 'a line-0 Light', 'a line-0 Heavy']);
  });

  it('has names last', () => {
    const named = withLines(
      { placements: [light], nameList: 'Ada\nBob\nCyd\nDee\nEve\nFay' },
      { placements: [heavy] },
    );
    expect(order({ a: named }).at(-1)).toBe('a line-0 Light');
  });
});

describe('the order of sizes', () => {
  const line = { jobId: 'a', lineId: 'l' };
  const size = (name: string, wanted: number, spare: number) => ({ ...line, size: name, wanted, spare });

  it('has common ones first and, of those alike, the one with fewest spares last', () => {
    const sizes = [size('S', 4, 0), size('M', 9, 2), size('2XL', 4, 2)];
    expect(sizeOrder(sizes, [], []).map((one) => one.size)).toEqual(['M', '2XL', 'S']);
  });

  it('has the maker’s own first, in that order, once each, and leaves out what is not made', () => {
    const own = ['S', '2XL', 'S', '5XL'].map((name) => ({ ...line, size: name }));
    const sizes = [size('S', 4, 1), size('M', 9, 2), size('2XL', 4, 2)];
    expect(sizeOrder(sizes, [], own).map((one) => one.size)).toEqual(['S', '2XL', 'M']);
  });
});
