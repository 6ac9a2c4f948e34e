import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runArguments } from '@/app/_commands/runArguments';
import { asked, kindOf, made, tableOf, type WrittenEntry, withEntries, withRun } from './writtenRun';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const EXAMPLE = 'public/examples/club-run.json';
let folder = '';
let example = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'run-'));
  example = await readFile(join(root, EXAMPLE), 'utf8');
});
afterAll(() => rm(folder, { recursive: true }));

const run = (
  ...words: readonly string[]
): Promise<{ readonly code: number; readonly output: string; readonly errors: string }> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      ['node_modules/tsx/dist/cli.mjs', 'app/_commands/run.ts', ...words],
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

const actualOf = ({ entry }: WrittenEntry) => {
  const { actual } = entry.body;
  return typeof actual === 'object' && actual !== null && 'of' in actual ? actual.of : null;
};

describe('npm run run', () => {
  it('buys blanks of the worked order at 75 %, and tells the three covers', async () => {
    const { code, output, errors } = await run(EXAMPLE);
    expect([code, errors]).toEqual([0, '']);
    const { buy, covers } = JSON.parse(output);
    // Spares that hold the worked order; chances of the binomial of 0.936243 a blank.
    expect(buy.map(({ size, need, buy: bought }: Blanks) => [size, need, bought])).toEqual([
      ['S', 4, 5],
      ['M', 9, 11],
      ['L', 11, 13],
      ['XL', 8, 10],
      ['2XL', 4, 5],
      ['3XL', 1, 1],
    ]);
    expect(buy.map(({ chance }: Blanks) => chance.toFixed(4))).toEqual([
      ...['0.9643', '0.9710', '0.9542', '0.9779', '0.9643', '0.9362'],
    ]);
    expect(covers.map(({ cover, bought }: CoverTold) => [cover, bought])).toEqual([
      ['expected', 40],
      ['usual', 45],
      ['sure', 50],
    ]);
    // 35.3, 78.9 and 95.05 %.
    expect(covers.map(({ everySize }: CoverTold) => (everySize * 100).toFixed(2))).toEqual([
      ...['35.33', '78.87', '95.05'],
    ]);
  });

  it('lays it into the block from 18:00 to 23:00 by the worked clock', async () => {
    const { clock, sessions, piecesPerHour, bottleneck } = await asked(made);
    const day = '2026-12-07';
    expect(clock.map((one) => Object.values(one))).toEqual([
      // 52.9 sheets at two and a half minutes, on the evening before.
      ['print', '2026-12-06', '18:00', '20:12'],
      ['setUp', day, '18:00', '18:25'],
      ['test Back picture', day, '18:25', '18:30'],
      ['press Back picture', day, '18:30', '20:04'],
      ['break', day, '20:04', '20:14'],
      ['press Chest badge', day, '20:14', '21:33'],
      ['finish', day, '21:33', '22:17'],
      ['pack', day, '22:17', '22:29'],
      ['cleanDown', day, '22:29', '22:39'],
    ]);
    expect(Object.keys(clock[0] ?? {})).toEqual(['what', 'day', 'from', 'to']);
    expect(sessions).toEqual([{ day, from: '18:00', to: '22:39' }]);
    // 98.7 + 79.3 = 178.0 min at the press for 37 pieces, the printer 132.
    expect(bottleneck).toBe('press');
    expect(piecesPerHour?.toFixed(1)).toBe('12.5');
  });

  it('tells each variance of the worked order and the bridge to the cent', async () => {
    const { variances, bridge } = await asked(made);
    expect(variances.map((one) => Object.values(one))).toEqual([
      ['blanksPrice', -493],
      ['blanksUsage', -715],
      ['paperPrice', -58],
      ['paperUsage', -71],
      ['inkUsage', -142],
      ['labour', -1552],
      ['overhead', -362],
      ['reprints', 0],
    ]);
    expect(variances.reduce((sum, { amount }) => sum + amount, 0)).toBe(-3393);
    expect(bridge).toEqual({ from: 28_837, to: 25_444 });
  });

  it('has what is held for reprints as a bar of its own where none was needed', async () => {
    const { variances, bridge } = await asked(
      withEntries((all) => all.filter((one) => actualOf(one) !== 'reprints')),
    );
    expect(variances.at(-1)).toEqual({ line: 'reprints', amount: 622 });
    expect(bridge).toEqual({ from: 28_837, to: 26_066 });
  });

  it('learns scrap of each print from its own standard and its presses', async () => {
    const { learned } = await asked(made);
    // (50 × 0.035 + 2) ÷ 91 and (50 × 0.02 + 2) ÷ 89, with the upper 90 % of their Beta.
    expect(
      learned.map(({ placement, scrap, upper }) => [
        placement,
        ...[(scrap * 100).toFixed(2), (upper * 100).toFixed(1)],
      ]),
    ).toEqual([
      ['back', '4.12', '6.9'],
      ['badge', '3.37', '5.9'],
    ]);
  });

  it('says beside it what of the bridge stands in no variance', async () => {
    const freight = (all: readonly WrittenEntry[]) =>
      all.map((one) =>
        actualOf(one) === 'reprints'
          ? {
              entry: {
                ...one.entry,
                body: { ...one.entry.body, actual: { of: 'freight', amountMinor: 1070 } },
              },
            }
          : one,
      );
    const { beside } = await asked(withEntries(freight));
    // 9.50 was planned.
    expect(beside).toEqual(['The bridge also has freight −1.20 USD.']);
  });

  it('plans a run that has not begun, and holds it against nothing', async () => {
    const { variances, bridge, clock, buy, learned } = await asked(
      withEntries((all) => all.filter((one) => ['orderEvent', 'approval'].includes(kindOf(one)))),
    );
    expect([variances, bridge, learned]).toEqual([[], null, []]);
    expect([clock.length, buy.length]).toEqual([9, 6]);
  });

  it('takes blanks that lie at home first', async () => {
    const counted: WrittenEntry = {
      entry: {
        ...{ id: 'exampleclubrun-900', kind: 'stockCount', device: 'exampleclubrun', count: 900, version: 1 },
        at: made.madeAt,
        body: {
          item: { kind: 'blank', blankId: 'white-shirt', size: 'L', lot: null },
          ...{ place: { kind: 'home' }, grade: 'first', quantity: 4 },
        },
      },
    };
    const { buy } = await asked(withEntries((all) => [...all, counted]));
    expect(buy.map(({ size, buy: bought }) => [size, bought])).toContainEqual(['L', 9]);
  });

  it('ends with 2 where the run cannot be planned, and says why', async () => {
    const file = await changed('short.json', '"minutes": 300', '"minutes": 30');
    const { code, output, errors } = await run(file);
    expect(code).toBe(2);
    const { troubles, variances, ...rest } = JSON.parse(output);
    expect(troubles).toMatchObject([{ kind: 'noBlock', longestMinutes: 30 }]);
    expect([variances.length, Object.keys(rest)]).toEqual([8, ['bridge', 'learned']]);
    expect(errors).toMatch(
      /^No time at the bench is long enough .* Give the run a longer time\.\nIt is not planned, but .*\n$/,
    );
  });

  it('ends with 1 where a file or a run cannot be used, and says why', async () => {
    expect(await run('public/examples/club-quote.json')).toMatchObject({
      code: 1,
      errors: expect.stringMatching(/holds no run\. Nothing was planned\.\n$/),
    });
    expect(await run(EXAMPLE, '--run', 'other')).toMatchObject({
      code: 1,
      errors: expect.stringMatching(/holds no run other: name one of them\.\n--run club-run \(/),
    });
  });

  it('has no more than what stands in the way of a run that has not begun', async () => {
    const table = await tableOf(
      withRun(
        { works: [] },
        withEntries((all) => all.filter((one) => kindOf(one) === 'approval')),
      ),
    );
    expect(table).toEqual({
      kind: 'refused',
      answer: { troubles: [{ kind: 'noWorks', message: expect.stringMatching(/^No job is in this run/) }] },
      beside: [expect.stringMatching(/^No job is in this run/)],
    });
  });

  it('names a record by its id as the file has it, also where that is no text', async () => {
    const named = withEntries((all) =>
      all.map((one) =>
        kindOf(one) === 'hours' ? { entry: { ...one.entry, id: { no: 'text' } as never } } : one,
      ),
    );
    await expect(tableOf(named)).rejects.toThrow('\nhours {"no":"text"}: ');
  });

  it('refuses a file with a press that cannot be read, which would be another run', async () => {
    const spoiled = JSON.parse(JSON.stringify(made).replace('"result":"scrap"', '"result":"lost"'));
    await expect(asked(spoiled)).rejects.toThrow(/cannot be used\.\npressing exampleclubrun-\d+: /);
  });
});

describe('runArguments', () => {
  it('takes one file and a run', () => {
    expect(runArguments(['run.zip', '--run', 'club'])).toEqual({
      ...{ kind: 'usable', file: 'run.zip', runId: 'club' },
    });
  });

  it.each([
    [[], /^Name one file/],
    [['a.json', '--run'], /^--run needs a value/],
    [['a.json', '--day', 'x'], /^--day is not known/],
  ])('refuses %j', (words, why) => {
    expect(runArguments(words)).toEqual({ kind: 'unusable', why: expect.stringMatching(why) });
  });
});

it('the file of the worked run is the one that a reader can edit', () => {
  expect(JSON.parse(example)).toEqual(made);
});

// Helpers

interface Blanks {
  readonly size: string;
  readonly need: number;
  readonly buy: number;
  readonly chance: number;
}

interface CoverTold {
  readonly cover: string;
  readonly bought: number;
  readonly everySize: number;
}
