import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type BreaksProblem, checkBreaks } from '@/lib/job/checkBreaks';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { apartList } from '@/lib/price/list/apartList';
import { judgedJob } from '@/lib/price/list/judgedJob';
import type { LineList } from '@/lib/price/list/lineList';
import type { Selling, WrittenTariff } from '@/lib/price/list/selling';
import { priceLine } from '@/lib/price/priceTable';
import { taxTerms } from '@/lib/price/taxTerms';
import type { JobInput } from '@/shared/schemas/request';
import { type BreakEnds, breakEnds } from './breakEnds';
import { type BreakGroup, breakGroups } from './breakGroups';
import { type CeilingGap, ceilingGap } from './ceilingGap';
import { type LineTariff, lineTariff } from './lineTariff';
import { type PriceEndings, priceEndings } from './priceEndings';
import { type RemedyOffer, remedyOffers } from './remedyOffers';
import { type SellingEffect, sellingEffects } from './sellingEffects';
import { sizesAsSold } from './sizesAsSold';
import type { Staircase } from './staircase';
import { staircaseOf } from './staircaseOf';
import { type UpCharges, upCharges } from './upCharges';

/** Which line is looked at, and quantities the maker wants to see sold. */
export interface BreaksQuestion {
  readonly lineId: string;
  /** Whole pieces, 1 to 2,000. */
  readonly quantities: readonly number[];
}

/** A tariff in words: money as the channel writes prices, currency units, unrounded. */
interface ChannelTariff extends LineTariff {
  /** What the base size would be written at with its set-up apart: every order reaches its target. */
  readonly written: WrittenTariff;
}

/** Everything that is to be said of the price list of one line. */
export interface BreaksAnswer {
  readonly lineId: string;
  readonly currency: string;
  /** Of the breaks as they are typed. */
  readonly breakProblems: readonly BreaksProblem[];
  readonly ends: readonly BreakEnds[];
  /** Null where the step is no step; the checks say so. */
  readonly upCharges: UpCharges | null;
  /** Sizes with the same prices, each with what its list does as the quantity rises. */
  readonly groups: readonly BreakGroup[];
  /** The list as it is sold, and as the sums suggest it. */
  readonly list: LineList;
  readonly suggested: LineList;
  /** The order breaks are judged to. */
  readonly judgedTo: number;
  readonly staircase: Staircase;
  /** In the order they are told; none but for a list that is sold as it stands and falls. */
  readonly remedies: readonly RemedyOffer[];
  readonly tariff: ChannelTariff | null;
  /** What orders of the sizes of the first group pay, at the edges of breaks and as asked. */
  readonly sold: readonly SellingEffect[];
  readonly ceiling: CeilingGap | null;
  /** Of a job of one line: the neighbours of its target on the maker's ending. */
  readonly endings: PriceEndings | null;
}

/** @returns null while the job cannot be costed or has no such line with pieces. */
export function breaksAnswer(input: JobInput, grid: Grid, question: BreaksQuestion): BreaksAnswer | null {
  const costed = costInput(input, grid);
  const line = costed?.laidOut.job.lines.find((one) => one.line.id === question.lineId);
  return costed === null || line === undefined ? null : answerLine(costed, line, grid, question);
}

function answerLine(
  costed: CostedJob,
  line: ResolvedLine,
  grid: Grid,
  { quantities }: BreaksQuestion,
): BreaksAnswer {
  const { sheet, laidOut } = costed;
  const { job } = laidOut;
  const { policy, currency } = job.workshop;
  const priced = priceLine(costed, line, grid);
  const { list, needs, orders, table } = priced;
  const evaluate = caseEvaluator(judgedJob(costed, line), line, grid);
  const tariff = channelTariff(costed, line, grid, apartList(job, needs, orders));
  const groups = breakGroups(costed, line, list);
  const [first] = groups;
  const charges = upCharges(costed, line, needs, orders);
  const endings =
    job.lines.length > 1 ? null : priceEndings(costed, grid, policy.priceStep, line.line.marketCeiling);
  const isFalling = groups.some(({ stretches }) => stretches.length > 0);
  const sizes = sizesAsSold(
    line,
    first?.sizes ?? [],
    job.ownRows.some(({ cost }) => cost.kind === 'formula'),
  );
  return {
    lineId: line.line.id,
    currency,
    breakProblems: checkBreaks(line.line.breaks ?? policy.breaks ?? list.breaks.map(({ from }) => from)),
    ends: breakEnds(costed, grid, table, list.start),
    upCharges: charges.ok ? charges.value : null,
    groups,
    list,
    suggested: priced.suggested,
    judgedTo: orders.to,
    staircase: staircaseOf(line, priced, currency),
    remedies: isFalling ? remedyOffers({ costed, line, priced, evaluate }) : [],
    tariff,
    sold:
      first === undefined
        ? []
        : sellingEffects(
            { kind: 'asListed', list: first.list },
            first.sold,
            edges(first.sold, first.list.breaks, quantities),
            currency,
            sizes,
            evaluate,
          ),
    ceiling: ceilingGap(sheet, line.line, taxTerms(sheet)),
    endings: endings?.ok ? endings.value : null,
  };
}

/** The last quantity before each break and its first, with those that were asked for. */
function edges(
  selling: Selling,
  breaks: readonly { readonly from: number }[],
  asked: readonly number[],
): readonly number[] {
  const starts = selling.kind === 'asListed' ? [] : breaks.flatMap(({ from }) => [from - 1, from]);
  const all = new Set([...starts, ...asked].filter((n) => n >= 1));
  return [...all].sort((a, b) => a - b);
}

function channelTariff(
  costed: CostedJob,
  line: ResolvedLine,
  grid: Grid,
  written: WrittenTariff,
): ChannelTariff | null {
  const tariff = lineTariff(costed, line, grid);
  if (tariff === null) return null;
  const tax = taxTerms(costed.sheet);
  return {
    ...tariff,
    start: tax.written(tariff.start),
    each: tax.written(tariff.each),
    largestError: tax.written(tariff.largestError),
    smallError: tax.written(tariff.smallError),
    written,
  };
}
