import { planBuying } from '@/lib/buying/planBuying';
import { cheapestCover } from '@/lib/job/cheapestCover';
import { foldLearned } from '@/lib/learning/foldLearned';
import { type AnyRunNote, factsOfRuns } from '@/lib/making/runFacts';
import { foldPressings } from '@/lib/pressing/foldPressings';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { stockValue } from '@/lib/stock/stockValue';
import { inOrder } from '@/lib/stored/entriesInForce';
import { yearSpan } from '@/lib/year/yearSpan';
import { yearStanding } from '@/lib/year/yearStanding';
import { runSchema } from '@/shared/schemas/making/run';
import { stockMoveSchema } from '@/shared/schemas/stock';
import { club } from '@/tests/fixtures/clubJob';
import { pieceOf, pressedOn, clubStandard as pressedStandard } from '@/tests/fixtures/clubPressing';
import { planned, runAsked } from '@/tests/fixtures/clubRun';
import { clubFacts } from '@/tests/fixtures/clubStandard';
import { costed, grid } from '@/tests/fixtures/costed';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';
import { asked, shirt, supplier, work } from '@/tests/lib/buying/asked';
import { aYear, delivered, entry, spent, worked } from '@/tests/lib/year/aYear';
import { type BenchRow, timeRow } from './benchRow';
import { timesBeside } from './measure';

const PRESSES = 5000;
const RUNS = 200;
const NOTED = 20_000;

/** What a run, its buying, the screen at the press, its lessons, the stock and a year take, once there is much of each. */
export const benchMaking = (): readonly BenchRow[] => [...benchSums(), ...benchFolds()];

// Helpers

/** Beside costing the club's job once. */
function benchSums(): readonly BenchRow[] {
  const run = runAsked({}, { club: club(), again: club(), third: club() });
  const buying = threeFromThree();
  const sizes = oddSizes();
  const runs = Array.from({ length: RUNS }, (_, at) =>
    learnedRun(clubFacts({ reprints: null }), `run-${at}`),
  );
  const learned = learnedFrom({ runs });
  const row = (what: string, count: number, figure: () => unknown): BenchRow =>
    timeRow(
      what,
      timesBeside(
        count,
        () => null,
        figure,
        () => costed(club()),
      ),
      'the club’s job costed',
    );
  return [
    row('a run of three costed jobs planned', 10, () => planned(run)),
    row('buying for three works from three suppliers', 10, () => planBuying(buying, grid)),
    row('the cheapest cover of eight sizes at eight prices', 10, () => cheapestCover(sizes, 0.95)),
    row(`what ${RUNS} runs taught`, 10, () => foldLearned(learned)),
  ];
}

/** Beside putting the same entries in order. */
function benchFolds(): readonly BenchRow[] {
  const pressed = presses();
  const moves = stockMoves();
  const year = aBusyYear();
  const span = yearSpan(2026, 1);
  const all = [...year.expenses, ...year.goodsIn, ...year.hours];
  const [runs, notes] = notedRuns();
  const row = (what: string, figure: () => unknown, entries: Parameters<typeof inOrder>[0]): BenchRow =>
    timeRow(
      what,
      timesBeside(
        10,
        () => null,
        figure,
        () => inOrder(entries),
      ),
      'put in order',
    );
  return [
    row(
      `${thousands(PRESSES)} presses of a run folded`,
      () => foldPressings(pressedStandard, pressed, []),
      pressed,
    ),
    row(`${RUNS} runs parted from ${thousands(NOTED)} notes`, () => factsOfRuns(runs, notes, []), notes),
    row(`stock of ${thousands(NOTED)} moves at what was paid`, () => stockValue(moves), moves),
    row(`a year of ${thousands(NOTED)} entries`, () => yearStanding(year, span, '2026-12-31'), all),
  ];
}

const thousands = (count: number): string => count.toLocaleString('en');

const SIZES = ['S', 'M', 'L', 'XL', '2XL', '3XL'] as const;

/** Each sells the shirt, at prices and packs of its own, with freight and a least order. */
function threeFromThree() {
  const offers = (each: number, packSize: number) =>
    SIZES.map((size) => ({
      ...{ id: `offer-${size.toLowerCase()}`, item: shirt(size), packSize },
      tiers: [
        { from: packSize, each },
        { from: packSize * 24, each: each * 0.9 },
      ],
    }));
  return asked({
    works: [work(), work(club(), { jobId: 'again' }), work(club(), { jobId: 'third' })],
    suppliers: [
      supplier('one', { name: 'One', freight: 9.5, offers: offers(4.6, 1) }),
      supplier('two', { name: 'Two', freight: 12, freeFreightFrom: 150, offers: offers(4.5, 6) }),
      supplier('three', { name: 'Three', freight: 6, minimumOrder: 80, offers: offers(4.7, 3) }),
    ],
  });
}

/** No two at one price, so that every one is searched over. */
const oddSizes = () =>
  [3, 7, 11, 13, 9, 6, 4, 2].map((pieces, at) => ({
    wanted: [{ pieces, chance: 0.9362 }],
    price: 4.13 + at * 0.37,
  }));

/** Good ones, and one in thirty lost, over both prints. */
const presses = () =>
  pressedOn(
    Array.from({ length: PRESSES }, (_, at) =>
      pieceOf(SIZES[at % SIZES.length] ?? 'M', at % 30 === 7 ? 'scrap' : 'good', {
        placementId: at % 2 === 0 ? 'back' : 'badge',
      }),
    ),
  );

/** Every run has as many pieces as any other, and they were pressed turn by turn. */
function notedRuns() {
  const ids = Array.from({ length: RUNS }, (_, at) => `run-${at}`);
  const notes = Array.from(
    { length: NOTED },
    (_, at): AnyRunNote =>
      entry('pressing', `deviceone-${at + 1}`, pieceOf('M', 'good', { runId: ids[at % RUNS] ?? '' })),
  );
  return [Object.fromEntries(ids.map((id) => [id, runSchema.parse({ name: id })])), notes] as const;
}

/** Bought ten at a time and used up one by one, of forty things. */
const stockMoves = (): readonly StockEntry[] =>
  Array.from({ length: NOTED }, (_, at) => {
    const isBought = at % 11 === 0;
    const thing = Math.floor(at / 11) % 40;
    return entry(
      'stockMove',
      `deviceone-${at + 1}`,
      stockMoveSchema.parse({
        item: { kind: 'blank', blankId: `blank-${thing}`, size: 'L', lot: null },
        ...{ place: { kind: 'home' }, grade: 'first', reference: null },
        ...{ quantity: isBought ? 10 : -1, cause: isBought ? 'bought' : 'used' },
        unitCost: isBought ? { minor: 460 + (at % 50), currency: 'USD' } : null,
      }),
    );
  });

/** Bills, deliveries and hours through all days of the year. */
function aBusyYear() {
  const day = (at: number): string => new Date(Date.UTC(2026, 0, 1 + (at % 365))).toISOString().slice(0, 10);
  const ids = Array.from({ length: NOTED }, (_, at) => at);
  const id = (at: number): string => `deviceone-${at + 1}`;
  return aYear({
    expenses: ids
      .filter((at) => at % 4 === 0)
      .map((at) => spent(id(at), 1000 + (at % 900), { day: day(at) })),
    goodsIn: ids
      .filter((at) => at % 4 === 1)
      .map((at) => delivered(id(at), { day: day(at), freightMinor: at })),
    hours: ids
      .filter((at) => at % 2 === 1 && at % 4 !== 1)
      .concat(ids.filter((at) => at % 4 === 2))
      .map((at) => worked(id(at), 10 + (at % 9), { day: day(at) })),
  });
}
