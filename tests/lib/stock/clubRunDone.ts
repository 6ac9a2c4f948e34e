import type { RunPieces } from '@/lib/stock/runMoves';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/* The worked order of 37 shirts as it was pressed, typed by hand: 41 backs of which 2 ghosted, 39 badges of which 1 had
 * specks and 1 was reversed. Which sizes they were is made up. */

const size = (
  name: string,
  wanted: number,
  take: number,
): StandardWork['lines'][number]['sizes'][number] => ({
  ...{ size: name, wanted, take, chance: 0.936, price: 4.83, blanksEach: 1.068, revenueEach: null },
  takes: { sheets: 1.376, mL: 0.807, finishMinutes: 1.2, otherCost: 0.374, reprints: 0.168, boughtIn: 5.77 },
});

const placement = (placementId: string): StandardWork['lines'][number]['placements'][number] => ({
  ...{ placementId, name: placementId, position: 'back', artworkId: 'art', artworkVersion: 1 },
  ...{ pressId: 'flat-press', pressName: 'Flat press', mirror: true, dropFromCollarMm: null, prints: [] },
  ...{ testPresses: 0, scrap: 0.03, entering: 38, handMinutes: 2.4, aloneMinutes: 0 },
  recipe: {} as never,
});

const work: StandardWork = {
  ...{ jobId: 'club-order', orderId: 'club', stallDayId: null, name: 'Club', sha256: '0'.repeat(64) },
  lines: [
    {
      ...{
        lineId: 'shirts',
        name: 'Club shirt',
        blankId: 'shirt',
        blankName: 'White shirt',
        isBrought: false,
      },
      sizes: [
        size('S', 4, 5),
        size('M', 9, 11),
        size('L', 11, 13),
        size('XL', 8, 10),
        size('2XL', 4, 5),
        size('3XL', 1, 1),
      ],
      placements: [placement('back'), placement('badge')],
    },
  ],
  sheets: { sheetId: 'letter', name: 'Letter', quantity: 52.9, tests: 2, price: 0.14 },
  ink: { mL: 35.1, sessionMl: 4, pricePerMl: 0.16 },
  labour: { minutes: 452.3, wagePerHour: 18, elements: [] },
  ...{
    overheadPerHour: 4.2,
    reprints: 6.22,
    freight: 9.5,
    otherCost: 0,
    fullCost: 411.79,
    fees: 9.64,
    feeShare: 0,
  },
  ...{ revenue: 711.5, overrides: [] },
};

export const clubStandard: RunStandard = {
  ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, runId: 'run', title: 'Club', currency: 'USD' },
  ...{ cover: 'usual', works: [work], sizes: [], clock: [] },
};

/** What came of it, size by size: 41 begun, 4 spoiled, 37 good. */
export const clubPieces: readonly RunPieces[] = (
  [
    ['S', 4, 0],
    ['M', 9, 1],
    ['L', 11, 2],
    ['XL', 8, 1],
    ['2XL', 4, 0],
    ['3XL', 1, 0],
  ] as const
).map(([name, good, scrap]) => ({
  ...{ jobId: 'club-order', lineId: 'shirts', size: name, wanted: good },
  ...{ started: good + scrap, drawn: good + scrap, scrap, good, seconds: 0 },
}));
