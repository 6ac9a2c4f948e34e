import { seededRandom } from '@/lib/packing/seededRandom';
import { betterSheets } from '@/lib/packing/sheet/betterSheets';
import { type PackedSheets, packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';
import { type Library, loadLibrary } from './library';

/*
 * npx tsx tests/bench/packing/fewKinds.ts [-- shortest side, mm]: jobs of few sizes with many copies, on how many sheets
 * the first answer and the better one lay them, how many layouts of straight cuts need at least, and how many a
 * general-purpose packing library takes, at best of its order by size and 199 others.
 */

const JOBS = 88;
const MARGIN_MM = 3;
const GUTTER_MM = 6;
const EFFORT = { steps: 16_000_000, seed: 1 };

const papers = [
  [215.9, 279.4],
  [210, 297],
  [297, 420],
  [330.2, 482.6],
] as const;

/** 3 to 8 sizes, 5 to 60 copies of each, sides of whole millimetres. */
function jobOf(seed: number, leastMm: number): SheetsRequest {
  const random = seededRandom(seed);
  const [sheetWidthMm, sheetHeightMm] = papers[seed % papers.length] ?? papers[0];
  const side = (roomMm: number) =>
    Math.round(leastMm + random() * (0.9 * (Math.min(260, roomMm) - GUTTER_MM) - leastMm));
  const pieces = Array.from({ length: 3 + Math.floor(random() * 6) }, (_, index) => ({
    id: String(index),
    widthMm: side(sheetWidthMm),
    heightMm: side(sheetHeightMm),
    count: 5 + Math.floor(random() * 56),
  }));
  return { sheetWidthMm, sheetHeightMm, marginMm: MARGIN_MM, gutterMm: GUTTER_MM, rotate: true, pieces };
}

function betterOf(request: SheetsRequest, first: PackedSheets): PackedSheets {
  const search = betterSheets(request, first, EFFORT);
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return value;
  }
}

function byLibrary(library: Library, { sheetWidthMm, sheetHeightMm, pieces }: SheetsRequest): number {
  const room = GUTTER_MM - 2 * MARGIN_MM;
  const paper = { widthMm: sheetWidthMm + room, heightMm: sheetHeightMm + room };
  const boxes = pieces.flatMap(({ id, widthMm, heightMm, count }) =>
    Array.from({ length: count }, () => ({
      id,
      widthMm: widthMm + GUTTER_MM,
      heightMm: heightMm + GUTTER_MM,
      count: 1,
    })),
  );
  return library.best(paper, boxes);
}

function problemsOf(request: SheetsRequest, { sheets }: PackedSheets): number {
  const paper = { ...request, widthMm: request.sheetWidthMm, heightMm: request.sheetHeightMm };
  const all = sheets.flatMap(({ pieces }) => pieces);
  return (
    sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper)).length +
    pieceProblems(all, request.pieces, true).length
  );
}

const leastMm = Number(process.argv.at(-1)) || 30;
const library = await loadLibrary();
const total = { first: 0, better: 0, straightCuts: 0, area: 0, library: 0, problems: 0, mostMs: 0, ms: 0 };
for (let seed = 1; seed <= JOBS; seed += 1) {
  const request = jobOf(seed, leastMm);
  const first = packSheets(request);
  if (!first.ok) throw new Error(JSON.stringify(first.problem));
  const start = process.cpuUsage();
  const better = betterOf(request, first.value);
  const { user, system } = process.cpuUsage(start);
  const ms = (user + system) / 1_000;
  total.first += first.value.count;
  total.better += better.count;
  // Where the first answer meets the bound of all layouts, that one is as high.
  total.straightCuts += better.guillotineBound ?? better.lowerBound;
  total.area += better.lowerBound;
  total.library += byLibrary(library, request);
  total.problems += problemsOf(request, better);
  total.ms += ms;
  total.mostMs = Math.max(total.mostMs, ms);
}
process.stdout.write(`${JSON.stringify({ jobs: JOBS, leastMm, ...total }, null, 2)}\n`);
