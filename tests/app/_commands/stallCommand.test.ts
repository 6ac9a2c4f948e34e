import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleStall } from '@/app/_commands/exampleStall';
import { stallArguments } from '@/app/_commands/stallArguments';
import { grid } from '@/tests/fixtures/costed';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const EXAMPLE = 'public/examples/spring-fair.json';
let folder = '';
let example = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stall-'));
  example = await readFile(join(root, EXAMPLE), 'utf8');
});
afterAll(() => rm(folder, { recursive: true }));

interface Run {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

const run = (...words: readonly string[]): Promise<Run> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      ['node_modules/tsx/dist/cli.mjs', 'app/_commands/stall.ts', ...words],
      { cwd: root, maxBuffer: 1e8 },
      (error, output, errors) => resolve({ code: Number(error?.code ?? 0), output, errors }),
    );
  });

/** The example with a text in it replaced, as a file. */
async function changed(name: string, from: string, to: string): Promise<string> {
  expect(example).toContain(from);
  const file = join(folder, name);
  await writeFile(file, example.replace(from, to));
  return file;
}

const CENTS = 0.02;
const near = (value: number, worked: number) =>
  expect(Math.abs(value - worked), `${value} for ${worked}`).toBeLessThanOrEqual(CENTS);

describe('npm run stall', () => {
  it('plans the worked fair, advises it and tells the money of its day', async () => {
    const { code, output, errors } = await run(EXAMPLE);
    expect([code, errors]).toEqual([0, '']);
    const { plan, advice, day } = JSON.parse(output);
    expect([plan.pieces, advice.pieces]).toEqual([96 + 36, 81 + 28]);
    near(plan.weightedProfit, 337.25);
    near(advice.weightedProfit, 360.68);
    const dry = plan.outcomes[0];
    expect(Object.keys(dry)).toEqual([
      ...['weather', 'chance', 'sold', 'netRevenue', 'fees', 'contribution', 'fixed', 'leftoverCost'],
      ...['profit', 'payPerHour'],
    ]);
    expect([dry.weather, dry.chance]).toEqual(['dry', 0.65]);
    near(dry.netRevenue, 1679.39);
    near(dry.fees, 39.09);
    near(dry.contribution, 1186.8);
    near(dry.fixed, 499.07);
    near(dry.leftoverCost, 361.2);
    near(dry.profit, 543.25);
    near(dry.payPerHour, 40.48);
    const { cash, withPay, everything, withWriteDown } = plan.breakEven;
    for (const [value, worked] of [
      [cash, 8.94],
      [withPay, 21.66],
      [everything, 30.65],
      [withWriteDown, 43.76],
      [plan.cashBefore, 747.51],
    ])
      near(value, worked);
    expect(plan.stayHomeBelow.toFixed(3)).toBe('0.178');
    // Three standard errors of 20,000 days.
    expect(Math.abs(plan.spread.sd - 338)).toBeLessThan(5.5);
    expect(Math.abs(plan.spread.lossChance - 0.16)).toBeLessThan(0.008);
    expect(day).toEqual({
      ...{ gross: 1723, net: 1610.28, tax: 112.72, fees: 37.99 },
      ...{ expectedCash: 532, difference: -2 },
    });
  });

  it('names shirts by size, and mugs by their design alone', async () => {
    const { output } = await run(EXAMPLE);
    const { plan, advice } = JSON.parse(output);
    const fern = { design: 'Fern', size: 'S' };
    expect(plan.bring[0]).toEqual({ ...fern, bring: 4 });
    expect(advice.bring[0]).toEqual({ ...fern, bring: 3 });
    expect(advice.bring.filter(({ size }: { size: string }) => size === '')).toEqual([
      { design: 'Fern', size: '', bring: 11 },
      { design: 'Otter', size: '', bring: 9 },
      { design: 'Star Map', size: '', bring: 8 },
    ]);
  });

  it.each(['mugs', 'MUGS'])('keeps 36 mugs beside the 81 shirts with --hold %s', async (range) => {
    const { advice } = JSON.parse((await run(EXAMPLE, '--hold', range)).output);
    expect(advice.pieces).toBe(81 + 36);
    near(advice.weightedProfit, 351.85);
  });

  it('keeps what two --hold name, which is the maker’s plan', async () => {
    const { plan, advice } = JSON.parse(
      (await run(EXAMPLE, '--hold', 'mugs', '--hold', 'Shirts', '--day', 'spring-fair')).output,
    );
    expect(advice).toEqual(plan);
  });

  it('ends with 2 where something stands in the way, and says all of it', async () => {
    const file = await changed('noJob.json', '"channelId": "stall"', '"channelId": null');
    const { code, output, errors } = await run(file);
    expect(code).toBe(2);
    expect(JSON.parse(output)).toMatchObject({ troubles: [{ kind: 'noChannel' }] });
    expect(errors).toMatch(/^No way of selling is chosen, so .* Choose it\.\n$/);
  });

  it('ends with 1 where a file, a day or a range cannot be used, and says why', async () => {
    const broken = join(folder, 'broken.json');
    await writeFile(broken, '{ "format": ');
    expect(await run(broken)).toMatchObject({
      code: 1,
      output: '',
      errors: expect.stringMatching(/is not JSON/),
    });
    expect(await run('public/examples/club-quote.json')).toMatchObject({
      code: 1,
      errors: expect.stringMatching(/holds no stall day\. Nothing was planned\.\n$/),
    });
    expect(await run(EXAMPLE, '--day', 'other')).toMatchObject({
      code: 1,
      errors: expect.stringMatching(/holds no stall day other: name one of them\.\n--day spring-fair \(/),
    });
    expect(await run(EXAMPLE, '--hold', 'hats')).toMatchObject({
      code: 1,
      output: '',
      errors: expect.stringMatching(/^--hold hats names no range .*\n--hold shirts \(Shirts\)\n/),
    });
  });

  it('plans without the money of a day that was not counted', async () => {
    const { papers: _, entries, counts, ...rest } = exampleStall(grid);
    const file = join(folder, 'planned.json');
    const approvals = entries.filter(({ entry }) => entry.kind === 'approval');
    const left = { ...counts, papers: 0, entries: approvals.length };
    await writeFile(file, JSON.stringify({ ...rest, papers: [], entries: approvals, counts: left }));
    const { code, output } = await run(file);
    expect(code).toBe(0);
    expect(Object.keys(JSON.parse(output))).toEqual(['plan', 'advice']);
  });
});

describe('stallArguments', () => {
  it('takes one file, a day and ranges', () => {
    expect(stallArguments(['fair.zip', '--hold', 'mugs', '--day', 'fair', '--hold', 'caps'])).toEqual({
      ...{ kind: 'usable', file: 'fair.zip', dayId: 'fair', hold: ['mugs', 'caps'] },
    });
  });

  it.each([
    [[], /^Name one file/],
    [['a.json', '--hold'], /^--hold needs a value/],
    [['a.json', '--day', 'a', '--day', 'b'], /^--day is given twice/],
    [['a.json', '--keep', 'mugs'], /^--keep is not known/],
  ])('refuses %j', (words, why) => {
    expect(stallArguments(words)).toEqual({ kind: 'unusable', why: expect.stringMatching(why) });
  });
});

it('the file of the worked fair is the one that a reader can edit', () => {
  expect(JSON.parse(example)).toEqual(JSON.parse(JSON.stringify(exampleStall(grid))));
});
