import { seededRandom } from '@/lib/packing/seededRandom';
import { betterSheets } from '@/lib/packing/sheet/betterSheets';
import { packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { type BenchRow, withRatio } from '@/tests/bench/benchRow';
import { median, percentile, timeOf } from '@/tests/bench/measure';
import { type CutSheets, cutSheets } from '@/tests/lib/packing/cutSheets';
import { piecesOf } from '@/tests/outside/packingInstances';
import { drawClass } from './drawClass';
import { countRow, requestOf } from './paper';

/** About what the page spends after the first answer. */
const FURTHER = { steps: 12_000_000, seed: 1 };
const CUTTINGS = 40;

interface Found {
  readonly first: number;
  readonly best: number;
  /** After the first answer. */
  readonly milliseconds: number;
}

/** @returns what looking on after the first answer finds, and what it takes. */
export function furtherRows(): readonly BenchRow[] {
  return [...cutRows(), ...[40, 60, 80, 100].flatMap(classRows)];
}

function cutRows(): readonly BenchRow[] {
  const letter = { widthMm: 216, heightMm: 279, pieces: [8, 14] } as const;
  const cuttings: readonly (readonly [string, CutSheets])[] = [2, 3].flatMap((sheets) => [
    [`${sheets} full sheets cut apart`, { ...letter, sheets }] as const,
    ...[0.97, 0.95].flatMap((fill) => [
      [`${sheets} sheets cut apart, shrunk to ${100 * fill} %`, { ...letter, sheets, fill }] as const,
      [
        `${sheets} sheets cut apart, shrunk unevenly to ${100 * fill} %`,
        { ...letter, sheets, fill, uneven: true },
      ] as const,
    ]),
  ]);
  return cuttings.flatMap(([what, cut]) => {
    const found = Array.from({ length: CUTTINGS }, (_, seed) => lookOn(cutSheets(cut, seed + 1)));
    const share = (count: (one: Found) => number) =>
      (100 * found.filter((one) => count(one) <= cut.sheets).length) / CUTTINGS;
    return [
      countRow(
        `${what}, found again`,
        '%',
        share(({ best }) => best),
        {
          what: 'the first answer',
          median: share(({ first }) => first),
        },
      ),
      timesOf(`${what}, looking on`, found),
    ];
  });
}

/** Three instances of each class by seed, against the area of their pieces alone. */
function classRows(pieces: number): readonly BenchRow[] {
  const drawn = Array.from({ length: 30 }, (_, index) => {
    const random = seededRandom(1_000 * pieces + index);
    const { side, items } = drawClass(1 + (index % 10), pieces, random);
    const area = items.reduce((sum, [width, height]) => sum + width * height, 0);
    return {
      least: Math.ceil(area / side ** 2),
      found: lookOn(requestOf({ widthMm: side, heightMm: side }, piecesOf(items))),
    };
  });
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const what = `mixed pieces, bin classes by seed, n = ${pieces}`;
  const found = drawn.map((one) => one.found);
  return [
    countRow(what, 'bins', sum(found.map(({ best }) => best)), {
      what: 'the area alone',
      median: sum(drawn.map(({ least }) => least)),
    }),
    countRow(`${what}, first answer`, 'bins', sum(found.map(({ first }) => first))),
    timesOf(`${what}, looking on`, found),
  ];
}

function lookOn(request: SheetsRequest): Found {
  const answer = packSheets(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
  let best = answer.value.count;
  const milliseconds = timeOf(() => {
    const search = betterSheets(request, answer.value, FURTHER);
    let slice = search.next();
    while (slice.done !== true) slice = search.next();
    best = slice.value.count;
  });
  return { first: answer.value.count, best, milliseconds };
}

function timesOf(what: string, found: readonly Found[]): BenchRow {
  const times = found.map(({ milliseconds }) => milliseconds);
  return withRatio({
    what,
    unit: 'ms',
    median: median(times),
    p99: percentile(times, 0.99),
    yardstick: null,
  });
}
