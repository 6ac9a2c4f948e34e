import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallTrouble } from '@/lib/stall/plan/stallPlanned';
import type { Blank } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';
import type { RangeDesign, StallGoods, StallRange } from '@/shared/schemas/stallDay';
import { designShares } from './designShares';
import { wantedSizes } from './pastWanted';
import { daysRestedOn, rangePieces } from './rangePieces';
import { sizeShares } from './sizeShares';

/** Goods that may come along, and how many are asked for. */
export interface GoodsAsked extends StallGoods {
  readonly rangeId: string;
  readonly design: string;
  readonly line: Line;
  /** What an unsold piece is still worth, share of its cost. */
  readonly leftoverShare: number;
  /** Pieces asked for over all days if all are dry. */
  readonly expected: number;
  /** Finished pieces at home; goods nobody counted have none to begin with. */
  readonly atHome: number;
  /** Of those, not pressed for the day: what they cost is paid. */
  readonly finishedBefore: number;
  /** The maker's own number; null follows the advice. */
  readonly held: number | null;
}

/** What is noted of goods, by their key: looking through lists for each of a thousand goods takes a second. */
interface Noted {
  readonly held: ReadonlyMap<string, number>;
  readonly atHome: ReadonlyMap<string, number>;
  readonly madeForDay: ReadonlyMap<string, number>;
}

interface AllGoods {
  readonly goods: readonly GoodsAsked[];
  readonly troubles: readonly StallTrouble[];
}

/**
 * Every size of every design that is asked for, held by the maker or finished at home. What stands in the way of
 * several designs is told for each.
 *
 * @param piecesPerTicket of the way of selling
 * @param leftoverShare of the day, for designs that have none of their own
 */
export function goodsAsked(asked: StallAsked, piecesPerTicket: number, leftoverShare: number): AllGoods {
  const { stallDay, past } = asked;
  const pieces = rangePieces({ stallDay, past, piecesPerTicket });
  const troubles: StallTrouble[] = [];
  const goods: GoodsAsked[] = [];
  if (stallDay.forecast.from === 'pastDays' && stallDay.forecast.stallDayIds.length === 0) {
    return { goods, troubles: [{ kind: 'noPastDay' }] };
  }
  const noted = notedOf(asked);
  if (stallDay.forecast.from !== 'typed' && [...pieces.values()].every((one) => one === null)) {
    return { goods, troubles: [{ kind: 'noForecast', rangeId: null, range: null }] };
  }
  for (const range of stallDay.ranges) {
    if (range.designs.length === 0) continue;
    const all = pieces.get(range.id) ?? null;
    if (all === null) troubles.push({ kind: 'noForecast', rangeId: range.id, range: range.name });
    else {
      const found = goodsOf(asked, noted, range, all * stallDay.eventFactor, leftoverShare);
      goods.push(...found.goods);
      troubles.push(...found.troubles);
    }
  }
  return { goods: onceEach(goods), troubles };
}

// Helpers

const notedOf = ({ stallDay, atHome, madeForDay }: StallAsked): Noted => ({
  held: byKey(stallDay.held, ({ bring }) => bring),
  atHome: byKey(atHome, ({ pieces }) => pieces),
  madeForDay: byKey(madeForDay, ({ pieces }) => pieces),
});

/** The first that is noted of some goods counts. */
const byKey = <One extends StallGoods>(
  all: readonly One[],
  of: (one: One) => number,
): ReadonlyMap<string, number> => new Map(all.toReversed().map((one) => [goodsKey(one), of(one)] as const));

function goodsOf(
  asked: StallAsked,
  noted: Noted,
  range: StallRange,
  pieces: number,
  dayShare: number,
): AllGoods {
  const { forecast, ranges } = asked.stallDay;
  const days = forecast.from === 'pastDays' ? daysRestedOn(asked.past, forecast.stallDayIds) : [];
  const shares = designShares(ranges, range, days);
  const noShares: StallTrouble = { kind: 'noShares', rangeId: range.id, range: range.name };
  if (pieces > 0 && shares.every((share) => share === 0)) return { goods: [], troubles: [noShares] };
  const troubles: StallTrouble[] = [];
  const goods = range.designs.flatMap((design, at): readonly GoodsAsked[] => {
    if (design.isLeftOut) return [];
    const made = madeOf(asked, design);
    if ('kind' in made) {
      troubles.push(made);
      return [];
    }
    const called = design.name === '' ? made.line.name : design.name;
    const sizes = sizesOf(asked, range, made.blank);
    if (sizes === null) {
      const of = { rangeId: range.id, range: range.name };
      troubles.push(
        range.sizes === null ? { kind: 'noMix', ...of } : { kind: 'noSizes', ...of, design: called },
      );
      return [];
    }
    return made.blank.sizes.flatMap(({ name }) =>
      goodsOfSize(noted, range, design, made.line, name, {
        design: called,
        expected: pieces * (shares[at] ?? 0) * (sizes.get(name) ?? 0),
        leftoverShare: design.leftoverShare ?? dayShare,
      }),
    );
  });
  return { goods, troubles };
}

function goodsOfSize(
  noted: Noted,
  range: StallRange,
  { jobId, lineId }: RangeDesign,
  line: Line,
  size: string,
  figures: Pick<GoodsAsked, 'design' | 'expected' | 'leftoverShare'>,
): readonly GoodsAsked[] {
  const goods = { jobId, lineId, size };
  const key = goodsKey(goods);
  const held = noted.held.get(key) ?? null;
  const home = Math.max(0, Math.floor(noted.atHome.get(key) ?? 0));
  const finishedBefore = Math.max(0, home - (noted.madeForDay.get(key) ?? 0));
  if (!(figures.expected > 0) && held === null && home === 0) return [];
  return [{ ...goods, rangeId: range.id, line, ...figures, atHome: home, finishedBefore, held }];
}

function madeOf(
  { jobs }: StallAsked,
  { jobId, lineId }: RangeDesign,
): { readonly line: Line; readonly blank: Blank } | StallTrouble {
  const job = jobs.find((one) => one.jobId === jobId);
  if (job === undefined) return { kind: 'jobMissing', jobId };
  const { input } = job;
  const line = input.job.lines.find(({ id }) => id === lineId);
  if (line === undefined) return { kind: 'lineMissing', jobId, lineId, jobName: input.job.name };
  const blank = Object.hasOwn(input.blanks, line.blankId) ? input.blanks[line.blankId] : undefined;
  // Its own screen says that the blank is gone.
  return blank === undefined ? { kind: 'jobStopped', jobId, jobName: input.job.name } : { line, blank };
}

/** Goods of one size are all of that size; several sizes need a mix. */
function sizesOf(
  { past, stallDay }: StallAsked,
  range: StallRange,
  blank: Blank,
): ReadonlyMap<string, number> | null {
  const names = [...new Set(blank.sizes.map(({ name }) => name))];
  const [only] = names;
  if (range.sizes === null) {
    return names.length === 1 && only !== undefined ? new Map([[only, 1]]) : null;
  }
  const { ordered, ...usual } = range.sizes;
  const shares =
    stallDay.areOwnSizesLeftOut === true
      ? sizeShares(usual, new Map(), names)
      : sizeShares(range.sizes, wantedSizes(stallDay.ranges, range, past), names);
  return shares.size === 0 ? null : shares;
}

/** Goods that stand in two ranges are those of the first. */
const onceEach = (goods: readonly GoodsAsked[]): readonly GoodsAsked[] =>
  [...new Map([...goods].reverse().map((one) => [goodsKey(one), one])).values()].reverse();
