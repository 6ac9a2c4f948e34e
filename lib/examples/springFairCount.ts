import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay, Tap } from '@/shared/schemas/stallEvents';
import { SPRING_FAIR_ID } from './springFair';

/** A tap of the worked fair, minutes since midnight. */
interface FairTap {
  readonly minute: number;
  readonly tap: Tap;
}

/*
 * Every customer of the worked fair: when, how they paid, what they took.
 *
 * Cash, 13 tickets: a pair at 50, 9 shirts at 28, 2 at 31 and 3 mugs at 16 come to 50 + 252 + 62 + 48 = 412.
 * Card, 39 tickets: a pair at 50, 32 shirts at 28, 3 at 31 and 17 mugs come to 50 + 896 + 93 + 272 = 1,311.
 * Fern 17, Lighthouse 13, Otter 14 and Star Map 6 are 50 shirts, 5 of them 2XL or 3XL; mugs 9 + 6 + 5 = 20. The
 * seventh and last Otter L goes at 14:10.
 */
const TICKETS = `
10:18 card fern M
10:25 card fern L, otter mug
10:34 card fern 2XL, fern mug
10:39 card star-map XL, fern mug
10:48 card otter L
10:52 card fern XL
11:07 card fern L
11:09 card otter M
11:17 card lighthouse L, otter mug
11:28 cash fern M, star-map mug
11:30 card lighthouse XL, fern mug
11:35 cash lighthouse S
11:44 card fern mug
11:50 card lighthouse XL
11:51 cash otter L
12:04 card lighthouse M
12:11 card lighthouse M
12:13 card otter S
12:19 card otter M, fern mug
12:21 card otter L
12:26 card fern M
12:38 card lighthouse L, fern mug
12:45 card fern S, star-map mug
12:47 card otter L, star-map L, pair
12:57 card otter 2XL, otter mug
13:03 card otter mug
13:06 card fern mug
13:10 cash lighthouse M, fern L, pair
13:12 cash lighthouse L
13:13 card star-map 2XL
13:14 cash otter M
13:19 cash otter XL, otter mug
13:41 card otter L, otter mug
13:54 card star-map M
14:06 card otter L
14:10 card otter L
14:21 card lighthouse M, star-map mug
14:27 card fern L
14:31 cash star-map mug
14:42 cash fern S
14:53 card fern L
14:57 cash fern M
15:03 cash star-map L
15:12 card lighthouse XL, fern mug
15:21 card fern XL
15:25 card fern M, star-map mug
15:33 cash lighthouse 2XL
15:54 card star-map S
16:08 card lighthouse L, fern mug
16:11 card fern XL
16:20 cash fern 3XL
16:38 card otter XL
`;

/** Asked for and not there: Otter L once it was gone, and what there is none of. */
const ASKED = `
10:31 youth sizes
10:58 black shirt
11:40 youth sizes
12:33 youth sizes
13:27 black shirt
13:46 youth sizes
14:25 otter L
14:40 youth sizes
15:05 otter L
15:20 black shirt
15:40 otter L
15:58 youth sizes
16:25 black shirt
`;

/** @returns what was tapped at the worked fair, in order; in the money it was worked in, US dollars. */
export const springFairTaps = (): readonly FairTap[] =>
  [
    { minute: 600, tap: { what: 'weather', weatherId: 'dry' } as const },
    ...linesOf(TICKETS).flatMap(ticketTaps),
    ...linesOf(ASKED).map(askedTap),
  ].toSorted((one, other) => one.minute - other.minute);

/** @returns the body of the entry that keeps a tap. */
export const springFairTap = (planId: string, { tap }: FairTap) =>
  ({ stallDayId: SPRING_FAIR_ID, planId, currency: 'USD', tap }) as const;

// Helpers

interface Line {
  readonly minute: number;
  readonly words: string;
}

const linesOf = (text: string): readonly Line[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [, hour = '', minutes = '', words = ''] = /^(\d+):(\d+) (.+)$/.exec(line) ?? [];
      return { minute: Number(hour) * 60 + Number(minutes), words };
    });

function ticketTaps({ minute, words }: Line): readonly FairTap[] {
  const pay: StallPay = words.startsWith('cash ') ? 'cash' : 'card';
  const things = words.slice(pay.length + 1).split(', ');
  const taps: readonly Tap[] = [
    ...things.map((thing): Tap => {
      // Two for 50 instead of 56.
      if (thing === 'pair') return { what: 'set', setId: 'two-shirts', minor: 600, pay };
      const goods = goodsOf(thing);
      return { what: 'sale', goods, minor: priceOf(goods), pay };
    }),
    { what: 'next' },
  ];
  return taps.map((tap) => ({ minute, tap }));
}

function askedTap({ minute, words }: Line): FairTap {
  const isGoods = words.startsWith('otter ');
  return {
    minute,
    tap: { what: 'asked', goods: isGoods ? goodsOf(words) : null, words: isGoods ? '' : words },
  };
}

function goodsOf(thing: string): StallGoods {
  const [lineId = '', size = ''] = thing.split(' ');
  return size === 'mug'
    ? { jobId: 'fair-mugs', lineId, size: '11 oz' }
    : { jobId: 'fair-shirts', lineId, size };
}

function priceOf({ jobId, size }: StallGoods): number {
  if (jobId === 'fair-mugs') return 1600;
  return size === '2XL' || size === '3XL' ? 3100 : 2800;
}
