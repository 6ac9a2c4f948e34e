import { FILE_DAY } from '@/lib/examples/exampleFiles';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { springFairTap, springFairTaps } from '@/lib/examples/springFairCount';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type PaperBodies, paperKinds } from '@/lib/kinds/paperKinds';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { sha256OfValue } from '@/lib/stored/sha256';
import { noonOf } from '@/shared/days';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { StallTap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';

interface FairDayAt {
  /** As it goes along; of one day. */
  readonly plan: StallPlan;
  readonly device: { readonly id: string; readonly letter: string };
  /** The first count that the device has not given yet. */
  readonly firstCount: number;
}

const MS_PER_MINUTE = 60_000;
const NOON = 720;

/** 530.00 in the tin, 2.00 short: somebody got wrong change. All goods are there. */
const SAID: EveningAnswers = {
  ...noAnswers,
  cash: { counted: 53_000, coins: null, reason: 'wrongChange', reasonFor: -200 },
  stock: { ...noAnswers.stock, isRestAsReckoned: true },
  decision: 'again',
};

/**
 * The worked fair from the loaded car to the evening, as a carried file has it: the plan, every tap and the close.
 * Clocks are those of a place whose noon is that of UTC.
 */
export function exampleFairDay({ plan, device, firstCount }: FairDayAt) {
  const fairDay = plan.days[0]?.day ?? FILE_DAY;
  const noon = noonOf(fairDay);
  const wallClock: WallClock = (at) => ({
    day: fairDay,
    minute: Math.floor((at - noon) / MS_PER_MINUTE) + NOON,
  });
  let count = firstCount - 1;
  const counted = (at: number) => {
    count += 1;
    return { id: `${device.id}-${count}`, device: device.id, count, at };
  };
  const entry = (kind: 'issuing' | 'stallTap', at: number, body: unknown): Entry => ({
    ...counted(at),
    ...{ kind, version: entryKinds[kind].version, body },
  });
  const paper = <Kind extends 'stallPlan' | 'dayClose'>(
    kind: Kind,
    series: string,
    at: number,
    body: PaperBodies[Kind],
  ): Paper<Kind, PaperBodies[Kind]> => ({
    ...counted(at),
    ...{ kind, version: paperKinds[kind].version, series, number: { ...FIRST, letter: device.letter } },
    ...{ about: { kind: 'stallDay', id: SPRING_FAIR_ID }, sha256: sha256OfValue(body), file: null, body },
  });
  const loaded = noonOf(FILE_DAY);
  const planned = paper('stallPlan', `stallPlan ${SPRING_FAIR_ID}`, loaded, plan);
  const fixed = entry('issuing', loaded, { paperId: planned.id });
  const taps = springFairTaps().map((tap): TappedEntry & Entry<string, StallTap> => {
    const at = noon + (tap.minute - NOON) * MS_PER_MINUTE;
    const body = springFairTap(planned.id, tap);
    return { ...counted(at), kind: 'stallTap', version: entryKinds.stallTap.version, body };
  });
  const evening = reconcile(plan, foldTaps(plan, taps, wallClock), SAID, wallClock);
  const closedAt = noon + (EVENING - NOON) * MS_PER_MINUTE;
  const body = closeBody(evening, {
    ...{ number: { ...FIRST, letter: device.letter }, issuedOn: fairDay },
    ...{ planId: planned.id, answers: SAID, clock: wallClock },
  });
  const close = paper('dayClose', closeSeries(SPRING_FAIR_ID), closedAt, body);
  const closed = entry('issuing', closedAt, { paperId: close.id });
  return { papers: [planned, close], entries: [fixed, ...taps, closed] };
}

// Helpers

/** The first of its series. */
const FIRST = { count: 1 } as const;

/** 21:14. */
const EVENING = 21 * 60 + 14;
