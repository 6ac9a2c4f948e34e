import { addDays, weekdayOf } from '@/shared/days';
import type { Job } from '@/shared/schemas/job';
import type { StallDay } from '@/shared/schemas/stallDay';
import { KM_PER_MILE } from '@/shared/units';
import { ratesOf } from './exampleRates';
import { timesExact } from './scaleMoney';

export const SPRING_FAIR_ID = 'spring-fair';

const SHIRTS = 'fair-shirts';
const MUGS = 'fair-mugs';

const SATURDAY = 5;
/** So that everything can be pressed before, whenever the example is opened. */
const LEAST_DAYS = 42;

/** @returns the day of the fair of the worked example: the first Saturday six weeks away or more. */
export function springFairDay(day: string): string {
  const soonest = addDays(day, LEAST_DAYS);
  return addDays(soonest, (SATURDAY - weekdayOf(soonest) + 7) % 7);
}

interface FairAt {
  /** On which its figures were set. */
  readonly day: string;
  readonly fairDay: string;
  /** What is made for it, by the ids of the jobs. */
  readonly jobs: { readonly [SHIRTS]: Job; readonly [MUGS]: Job };
  /** How much money is there against dollars. */
  readonly times: number;
  readonly isMetric: boolean;
}

/** A fair of one day in the open: ninety-six shirts and thirty-six mugs as its maker would bring them. All invented. */
export function springFair({ day, fairDay, jobs, times, isMetric }: FairAt): StallDay {
  const rate = ratesOf(day);
  const typed = (id: string, what: string, money: number, kind: 'sunk' | 'avoidable') =>
    ({
      id,
      what,
      amount: { of: 'typed', money: timesExact(money, times) },
      kind,
      isStallFee: false,
      paidOn: null,
    }) satisfies StallDay['costs'][number];
  return {
    name: 'Exampleton Spring Fair',
    place: 'Market Green, Exampleton',
    organiser: 'Exampleton Fair Committee',
    stage: 'accepted',
    applyBy: null,
    answerBy: null,
    permit: { state: 'have', until: null },
    insurance: { state: 'have', until: null },
    attachments: [],
    isOutdoor: true,
    days: [{ id: 'saturday', day: fairDay, fromMinute: 10 * 60, toMinute: 17 * 60, weight: 1 }],
    channelId: 'stall',
    costs: [
      { ...typed('stall', 'Stall fee', 85, 'sunk'), isStallFee: true, paidOn: day },
      // There and back.
      {
        id: 'drive',
        what: 'Drive',
        amount: { of: 'drive', km: isMetric ? 75 : 46 * KM_PER_MILE },
        kind: 'avoidable',
        isStallFee: false,
        paidOn: null,
      },
      typed('parking', 'Parking', 6, 'avoidable'),
      typed('display', 'Wear of table and rail', 12, 'avoidable'),
      typed('insurance', 'Insurance of the day', 15, 'sunk'),
    ],
    hours: [
      { id: 'load', what: 'Load', hours: 1.5 },
      { id: 'drive', what: 'Drive and set up', hours: 1.25 },
      { id: 'sell', what: 'Sell', hours: 7 },
      { id: 'pack', what: 'Pack up', hours: 1 },
      { id: 'count', what: 'Count and bank', hours: 0.75 },
    ],
    weathers: [
      weather('dry', 'dry', 0.65, 1),
      weather('showers', 'showers', 0.25, 0.65),
      weather('wet', 'wet', 0.1, 0.3),
    ],
    eventFactor: 1,
    forecast: { from: 'typed' },
    ranges: [
      {
        id: 'shirts',
        name: 'Shirts',
        pieces: 54,
        sizes: {
          from: 'typed',
          shares: [
            { size: 'S', share: 0.12 },
            { size: 'M', share: 0.26 },
            { size: 'L', share: 0.3 },
            { size: 'XL', share: 0.2 },
            { size: '2XL', share: 0.08 },
            { size: '3XL', share: 0.04 },
          ],
        },
        designs: [
          design(SHIRTS, 'fern', 'Fern', 0.32),
          design(SHIRTS, 'lighthouse', 'Lighthouse', 0.27),
          design(SHIRTS, 'otter', 'Otter', 0.25),
          design(SHIRTS, 'star-map', 'Star Map', 0.16),
        ],
      },
      {
        id: 'mugs',
        name: 'Mugs',
        pieces: 22,
        sizes: null,
        designs: [
          design(MUGS, 'fern', 'Fern', 9),
          design(MUGS, 'otter', 'Otter', 7),
          design(MUGS, 'star-map', 'Star Map', 6),
        ],
      },
    ],
    leftoverShare: rate(0.6, 'share', 'typical'),
    held: ([SHIRTS, MUGS] as const).flatMap((jobId) =>
      jobs[jobId].lines.flatMap(({ id, quantities }) =>
        quantities.map(({ size, quantity }) => ({ jobId, lineId: id, size, bring: quantity })),
      ),
    ),
    limits: { tablePieces: null, cash: null, benchHours: null },
    prices: {
      own: [],
      sets: [
        {
          id: 'two-shirts',
          name: 'Two shirts',
          pieces: 2,
          price: timesExact(50, times),
          rangeIds: ['shirts'],
          sizes: ['S', 'M', 'L', 'XL'],
        },
      ],
      lastHour: null,
    },
    float: { coins: null, firstTickets: null },
    power: { source: 'none', pressIds: [], guaranteedWatts: null },
    takeAlong: [
      'Tin with the float',
      'Card reader, charged',
      'Price cards',
      'Weights and side walls',
      'Bags',
      'Order pad',
    ].map((what, at) => ({ id: `take-${at + 1}`, what, isPacked: false })),
    made: [],
    note: '',
    archivedOn: null,
  };

  function weather(id: string, name: string, chance: number, factor: number) {
    return { id, name, chance: rate(chance, 'share'), factor: rate(factor, 'share', 'typical') };
  }
}

// Helpers

const design = (jobId: string, lineId: string, name: string, share: number) => ({
  jobId,
  lineId,
  name,
  share,
  leftoverShare: null,
  isLeftOut: false,
});
