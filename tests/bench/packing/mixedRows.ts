import { seededRandom } from '@/lib/packing/seededRandom';
import { packSheets } from '@/lib/packing/sheet/packSheets';
import { type BenchRow, timeRow } from '@/tests/bench/benchRow';
import { timesBeside } from '@/tests/bench/measure';
import { piecesOf } from '@/tests/outside/packingInstances';
import { LIBRARY, type Library } from './library';
import { countRow, drawn, type Paper, requestOf, sheetsFor } from './paper';

const RUNS = 7;

const kinds: readonly (readonly [string, number, number, Paper])[] = [
  ['100 mixed pieces of 30 to 150 mm on letter', 30, 150, { widthMm: 215.9, heightMm: 279.4 }],
  ['100 mixed pieces of 20 to 120 mm on A3+', 20, 120, { widthMm: 329, heightMm: 483 }],
  ['100 mixed pieces of 60 to 180 mm on A4', 60, 180, { widthMm: 210, heightMm: 297 }],
];

/** @returns a hundred pieces of different sizes, beside the library as it is and at its best. */
export function mixedRows(library: Library): readonly BenchRow[] {
  return kinds.flatMap(([kind, least, most, paper]) => {
    const random = seededRandom(7);
    const pieces = piecesOf(
      Array.from({ length: 100 }, () => [drawn(random, least, most), drawn(random, least, most)] as const),
    );
    const packed = packSheets(requestOf(paper, pieces));
    const what = `${kind}, bound ${packed.ok ? packed.value.lowerBound : Number.NaN}`;
    const [once, best] = [library.once, library.best].map((lay) => ({
      spent: timesBeside(
        RUNS,
        () => pieces,
        (all) => sheetsFor(paper, all),
        (all) => lay(paper, all),
      ),
      bins: lay(paper, pieces),
    }));
    if (once === undefined || best === undefined) return [];
    const bins = sheetsFor(paper, pieces);
    const most200 = 'the library, best of 200 orders';
    return [
      timeRow(what, once.spent, LIBRARY),
      timeRow(what, best.spent, most200),
      countRow(what, 'bins', bins, { what: LIBRARY, median: once.bins }),
      countRow(what, 'bins', bins, { what: most200, median: best.bins }),
    ];
  });
}
