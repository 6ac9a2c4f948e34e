import { costInput } from '@/lib/costing/costInput';
import { priceJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { LOOKED_AT_UP_TO } from '@/lib/price/list/firstFall';
import { judgedJob } from '@/lib/price/list/judgedJob';
import type { LineList } from '@/lib/price/list/lineList';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { sizesAsSold } from '@/lib/studies/breaks/sizesAsSold';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { type Finding, isStanding } from '@/shared/finding';
import { toMinor } from '@/shared/money';
import type { FrozenItem, ListedCharge, PriceListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import { anyDay } from './anyDay';
import { frozenRates } from './frozenRates';
import { itemDescription } from './itemSays';
import { leastMargins } from './leastMargins';
import { lookedAt } from './lookedAt';

/** How written prices of a sales channel stand to tax. */
export type TaxMode = 'added' | 'inside' | 'none';

/** What of a job can be put on a price list, or why it cannot. */
export type FrozenOutcome =
  | {
      readonly kind: 'frozen';
      readonly item: FrozenItem;
      readonly taxMode: TaxMode;
      /**
       * Charges that were wanted and are not listed: the first orders of the list bear them, or one piece is sold at
       * its one price, which a least order beside it would contradict.
       */
      readonly borne: readonly ListedCharge[];
    }
  /** A stop stands in the job. */
  | { readonly kind: 'stopped'; readonly why: Finding | null }
  /** The job has no such line, or no pieces in it. */
  | { readonly kind: 'noLine' }
  /** Nobody has said whether its prices have tax inside. */
  | { readonly kind: 'noTaxMode' }
  /** An order of so many pieces would cost less than one of a piece fewer. */
  | { readonly kind: 'falls'; readonly at: number }
  /** A price under what the pieces cost in full. */
  | { readonly kind: 'loses'; readonly from: number; readonly at: number; readonly margin: number };

/**
 * The offer of one line as it is written on a list, with the rates it stands on. Nothing that embarrasses its maker is
 * frozen: not while the job is stopped, a total falls as the quantity rises, or a price makes a loss.
 */
export function freezeItem(
  asked: JobInput,
  grid: Grid,
  { id, jobId, lineId, charges, ownAmounts }: PriceListItem,
): FrozenOutcome {
  const input = anyDay(asked);
  const ownOf = (kind: ListedCharge) => {
    const own = ownAmounts.find((one) => one.kind === kind);
    return own === undefined ? null : toMinor(own.amount, input.workshop.currency);
  };
  const { findings, prices } = priceJob(input, grid);
  const why = findings.find(isStanding) ?? null;
  const costed = why === null && prices !== null ? costInput(input, grid) : null;
  if (costed === null || prices === null) return { kind: 'stopped', why };
  const { job } = costed.laidOut;
  const line = job.lines.find((one) => one.line.id === lineId);
  const list = breaksAnswer(input, grid, { lineId, quantities: [] });
  const table = prices.table.filter((one) => one.lineId === lineId);
  const [first] = table;
  if (line === undefined || list === null || first === undefined) return { kind: 'noLine' };
  const falls = list.groups.find((group) => group.falls !== null)?.falls;
  if (falls != null) return { kind: 'falls', at: falls };
  const base = table.filter(({ size }) => size === first.size);
  const { taxMode } = job.channel;
  if (taxMode === null) return { kind: 'noTaxMode' };
  const apart = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  const { rule } = list.list;
  const least = leastMargins(
    base.map(({ from, to }) => ({ from, to, looked: lookedAt({ from, to, rule }, table) })),
    list.groups.flatMap(({ sizes, sold }) =>
      sizesAsSold(line, sizes, apart).map((size) => ({ size, selling: sold })),
    ),
    input.workshop.currency,
    caseEvaluator(judgedJob(costed, line), line, grid),
  );
  const breaks = base.flatMap(({ from, to }, index) => {
    const found = least[index];
    const each = list.list.breaks[index]?.each;
    return found == null || each === undefined
      ? []
      : [
          {
            from,
            to,
            each,
            leastAt: asQuantity(found.at),
            leastSize: found.size,
            leastMargin: found.margin,
          },
        ];
  });
  const losing = breaks.find(({ leastMargin }) => leastMargin < -1e-9);
  if (losing !== undefined)
    return { kind: 'loses', from: losing.from, at: losing.leastAt, margin: losing.leastMargin };
  const [firstBreak] = list.list.breaks;
  const told = (chargesAnswer(input, grid)?.charges ?? [])
    .filter((charge) => charges.includes(charge.id) && isOfLine(charge, line))
    .map((charge) => ({
      kind: charge.id,
      name: 'name' in charge ? charge.name : '',
      amount: ownOf(charge.id) ?? charge.written,
    }));
  const borne = told.filter((charge) =>
    rule === 'onePrice'
      ? charge.kind === 'minimumOrder' && ownOf(charge.kind) === null
      : isBorne(charge, list.list),
  );
  return {
    kind: 'frozen',
    taxMode,
    borne: borne.map(({ kind }) => kind),
    item: {
      id,
      jobId,
      lineId,
      name: line.line.name,
      says: itemDescription(input, line.line),
      largestPrint: largestOf(line.line.placements.flatMap(({ prints }) => prints)),
      sizes: list.list.sizes.map(({ size, more }) => ({ size, upCharge: more })),
      breaks,
      selling: rule,
      capOn: 'base',
      setUp:
        rule === 'setUpApart' && firstBreak !== undefined
          ? { start: list.list.start, each: firstBreak.each }
          : null,
      charges: told.filter((charge) => !borne.includes(charge)),
      targetMargin: job.rates.targetMargin.value,
      rates: frozenRates(input, line.line.blankId).map(({ isTypical: _, ...rate }) => rate),
    },
  };
}

// Helpers

/** Further prints and samples are charges of their line; the others are of the order. */
const isOfLine = (
  charge: { readonly id: string; readonly line?: string | null },
  { line }: ResolvedLine,
): boolean => charge.line == null || charge.line === line.name;

/**
 * A least order beside a list whose smallest order pays as much already says the same twice, in two figures. Only a
 * rule under which small orders pay the set-up can bear it.
 */
const isBorne = (
  { kind, amount }: { readonly kind: ListedCharge; readonly amount: number },
  { rule, breaks: [first] }: LineList,
): boolean =>
  kind === 'minimumOrder' &&
  (rule === 'capped' || rule === 'setUpApart') &&
  first !== undefined &&
  amount <= first.total;

/** As a paper keeps quantities: one price is judged at the batch as it is made, which may be any. */
const asQuantity = (n: number): number => Math.min(LOOKED_AT_UP_TO, Math.max(1, Math.round(n)));

function largestOf(
  prints: readonly { readonly widthMm: number; readonly heightMm: number }[],
): FrozenItem['largestPrint'] {
  const [largest] = prints.toSorted((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);
  return largest === undefined ? null : { widthMm: largest.widthMm, heightMm: largest.heightMm };
}
