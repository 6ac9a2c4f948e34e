import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type BreaksProblem, checkBreaks } from '@/lib/job/checkBreaks';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { priceTable } from '@/lib/price/priceTable';
import { taxTerms } from '@/lib/price/taxTerms';
import type { JobInput } from '@/shared/schemas/request';
import { type BreakEnds, breakEnds } from './breakEnds';
import { type BreakGroup, breakGroups } from './breakGroups';
import { type CeilingGap, ceilingGap } from './ceilingGap';
import { type LineTariff, lineTariff } from './lineTariff';
import { type PriceEndings, priceEndings } from './priceEndings';
import { type RemedyOffer, remedyOffers } from './remedyOffers';
import type { Selling } from './selling';
import { type SellingEffect, sellingEffects } from './sellingEffects';
import { sizesAsSold } from './sizesAsSold';
import { type UpCharges, upCharges } from './upCharges';
import { type WrittenTariff, writtenTariff } from './writtenTariff';

/** Which line is looked at, and quantities the maker wants to see sold. */
export interface BreaksQuestion {
  readonly lineId: string;
  /** Whole pieces, 1 to 2,000. */
  readonly quantities: readonly number[];
}

/** A tariff in words: money as the channel writes prices, currency units, unrounded. */
interface ChannelTariff extends LineTariff {
  /** What it would be written at; null for a line that starts or rises below 0. */
  readonly written: WrittenTariff | null;
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
  /** In the order they are told; none where the list is clean or a rule is in force. */
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
  const table = priceTable(costed, grid).filter(({ lineId }) => lineId === line.line.id);
  const evaluate = caseEvaluator(costed, line, grid);
  const tariff = channelTariff(costed, line, grid);
  const groups = breakGroups(costed, line, table, tariff?.written ?? null);
  const [first] = groups;
  const charges = upCharges(costed, line.line.id, policy.upChargeStep ?? policy.priceStep);
  const endings =
    job.lines.length > 1 ? null : priceEndings(costed, grid, policy.priceStep, line.line.marketCeiling);
  const asListed = groups.every(({ sold }) => sold.kind === 'asListed');
  const isFalling = groups.some(({ stretches }) => stretches.length > 0);
  const sizes = sizesAsSold(
    line,
    first?.sizes ?? [],
    job.ownRows.some(({ cost }) => cost.kind === 'formula'),
  );
  return {
    lineId: line.line.id,
    currency,
    breakProblems: checkBreaks(policy.breaks),
    ends: breakEnds(costed, grid, table),
    upCharges: charges.ok ? charges.value : null,
    groups,
    remedies:
      isFalling && asListed
        ? remedyOffers({ costed, line, table, tariff: tariff?.written ?? null, evaluate })
        : [],
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

function channelTariff(costed: CostedJob, line: ResolvedLine, grid: Grid): ChannelTariff | null {
  const tariff = lineTariff(costed, line, grid);
  if (tariff === null) return null;
  const tax = taxTerms(costed.sheet);
  return {
    ...tariff,
    start: tax.written(tariff.start),
    each: tax.written(tariff.each),
    largestError: tax.written(tariff.largestError),
    smallError: tax.written(tariff.smallError),
    written: writtenTariff(tariff, costed.sheet.currency, tax.inside),
  };
}
