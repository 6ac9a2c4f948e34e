import { designKey } from '@/lib/stall/designKey';
import type { JobBatch } from '@/lib/stall/plan/costs/makingCosts';
import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import { profitOfPieces } from '@/lib/stall/plan/outcomes/planOutcomes';
import { type Advice, adviseBring } from './adviseBring';
import type { BringLimits } from './withinLimits';

/** What making a job's part of a plan costs beside its pieces; by the order of the goods. */
type BatchOfJob = (jobId: string, bring: readonly number[]) => Pick<JobBatch, 'once' | 'onceOfLines'>;

interface Carried {
  readonly advice: Advice;
  /** Designs of which nothing is pressed, by `designKey`. */
  readonly leftOut: ReadonlySet<string>;
}

/** A design that earns so many times its part of what is spent once carries it, whatever the rest of its job does. */
const SURELY = 2;
const NOISE = 1e-9;

/**
 * The advice without designs and jobs that bring less than preparing and setting them up costs once; of these only what
 * lies finished comes along. What of them was pressed for the day has that cost behind it, and stays. Where so few pieces
 * fit within limits that none would carry it, the best that fit are told: what a day of them leaves says the rest.
 *
 * @param leftOut designs that are left out already
 */
export function adviseCarried(
  goods: readonly GoodsReckoned[],
  limits: BringLimits,
  batchOfJob: BatchOfJob,
  leftOut: ReadonlySet<string> = new Set(),
): Carried {
  const designs = groupsOf(goods, designKey);
  const jobs = groupsOf(goods, ({ jobId }) => jobId);
  let out = leftOut;
  let first: Carried | null = null;
  for (;;) {
    const advice = adviseBring(goods, limits, out);
    first ??= { advice, leftOut: out };
    if (isLimited(limits) && advice.bring.every((count) => count === 0)) return first;
    const known = onceEachJob(batchOfJob, advice.bring);
    const worst =
      worstOf(designs, (design) => lossOfDesign(goods, design, advice.bring, known)) ??
      worstOf(jobs, (job) => lossOfJob(goods, job, advice.bring, known));
    if (worst === null) return { advice, leftOut: out };
    out = new Set([...out, ...worst.flatMap((at) => goods[at] ?? []).map(designKey)]);
  }
}

// Helpers

const isLimited = ({ tablePieces, cash }: BringLimits): boolean => tablePieces !== null || cash !== null;

/** All designs of a job ask for the same batch. */
function onceEachJob(batchOfJob: BatchOfJob, whole: readonly number[]): BatchOfJob {
  const known = new Map<string, ReturnType<BatchOfJob>>();
  return (jobId, bring) => {
    if (bring !== whole) return batchOfJob(jobId, bring);
    const batch = known.get(jobId) ?? batchOfJob(jobId, bring);
    known.set(jobId, batch);
    return batch;
  };
}

/** Places among the goods. */
type Group = readonly number[];

function groupsOf(goods: readonly GoodsReckoned[], keyOf: (each: GoodsReckoned) => string): readonly Group[] {
  const groups = new Map<string, number[]>();
  for (const [at, each] of goods.entries()) {
    const group = groups.get(keyOf(each));
    if (group === undefined) groups.set(keyOf(each), [at]);
    else group.push(at);
  }
  return [...groups.values()];
}

/** @returns the group that loses most; null where none does */
function worstOf(groups: readonly Group[], lossOf: (group: Group) => number): Group | null {
  let worst: Group | null = null;
  let most = NOISE;
  for (const group of groups) {
    const loss = lossOf(group);
    if (loss > most) [most, worst] = [loss, group];
  }
  return worst;
}

/** What a design costs its job once over what pressing it earns; 0 or below where it carries that. */
function lossOfDesign(
  goods: readonly GoodsReckoned[],
  design: Group,
  bring: readonly number[],
  batchOfJob: BatchOfJob,
): number {
  const first = goods[design[0] ?? -1];
  const earns = earnedByPressing(goods, design, bring);
  if (first === undefined || earns === null) return 0;
  const all = batchOfJob(first.jobId, bring);
  if (earns > SURELY * (all.onceOfLines.get(first.lineId) ?? 0)) return 0;
  return all.once - batchOfJob(first.jobId, finishedOnly(goods, design, bring)).once - earns;
}

function lossOfJob(
  goods: readonly GoodsReckoned[],
  job: Group,
  bring: readonly number[],
  batchOfJob: BatchOfJob,
): number {
  const first = goods[job[0] ?? -1];
  const earns = earnedByPressing(goods, job, bring);
  return first === undefined || earns === null ? 0 : batchOfJob(first.jobId, bring).once - earns;
}

/** @returns null where nothing is to be pressed, or something was pressed for the day already */
function earnedByPressing(
  goods: readonly GoodsReckoned[],
  group: Group,
  bring: readonly number[],
): number | null {
  const own = group.flatMap((at) => goods[at] ?? []);
  const brought = group.map((at) => bring[at] ?? 0);
  const isPressed = own.some(({ atHome }, at) => (brought[at] ?? 0) > atHome);
  if (!isPressed || own.some(({ atHome, finishedBefore }) => atHome > finishedBefore)) return null;
  const finished = own.map(({ atHome }, at) => Math.min(brought[at] ?? 0, atHome));
  return profitOfPieces(own, brought) - profitOfPieces(own, finished);
}

function finishedOnly(
  goods: readonly GoodsReckoned[],
  group: Group,
  bring: readonly number[],
): readonly number[] {
  const less = [...bring];
  for (const at of group) less[at] = Math.min(less[at] ?? 0, goods[at]?.atHome ?? 0);
  return less;
}
