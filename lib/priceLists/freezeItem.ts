import { costInput } from '@/lib/costing/costInput';
import { priceJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import type { TablePrice } from '@/lib/price/priceTable';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Selling } from '@/lib/studies/breaks/selling';
import { sizesAsSold } from '@/lib/studies/breaks/sizesAsSold';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { type Finding, isStanding } from '@/shared/finding';
import { toMinor } from '@/shared/money';
import type { FrozenItem, ListedCharge, PriceListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import type { SellingRule } from '@/shared/schemas/sellingRule';
import { anyDay } from './anyDay';
import { frozenRates } from './frozenRates';
import { itemDescription } from './itemSays';
import { leastMargins } from './leastMargins';
import { lookedAt } from './lookedAt';

/** How written prices of a sales channel stand to tax. */
export type TaxMode = 'added' | 'inside' | 'none';

/** What of a job can be put on a price list, or why it cannot. */
export type FrozenOutcome =
  | { readonly kind: 'frozen'; readonly item: FrozenItem; readonly taxMode: TaxMode }
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
  const least = leastMargins(
    base.map(({ from, to }) => ({ from, to, looked: lookedAt(from, to, table) })),
    list.groups.flatMap(({ sizes, sold }) =>
      sizesAsSold(line, sizes, apart).map((size) => ({ size, selling: sold })),
    ),
    input.workshop.currency,
    caseEvaluator(costed, line, grid),
  );
  const breaks = base.flatMap(({ from, to, price }, index) => {
    const found = least[index];
    return found == null
      ? []
      : [{ from, to, each: price, leastAt: found.at, leastSize: found.size, leastMargin: found.margin }];
  });
  const losing = breaks.find(({ leastMargin }) => leastMargin < -1e-9);
  if (losing !== undefined)
    return { kind: 'loses', from: losing.from, at: losing.leastAt, margin: losing.leastMargin };
  const sold = list.groups[0]?.sold;
  return {
    kind: 'frozen',
    taxMode,
    item: {
      id,
      jobId,
      lineId,
      name: line.line.name,
      says: itemDescription(input, line.line),
      largestPrint: largestOf(line.line.placements.flatMap(({ prints }) => prints)),
      sizes: sizesOf(table),
      breaks,
      selling: sold === undefined ? 'asListed' : ruleOnPaper(sold),
      tariff: sold?.kind === 'tariff' ? { start: sold.tariff.start, each: sold.tariff.each } : null,
      charges: (chargesAnswer(input, grid)?.charges ?? [])
        .filter(
          (charge) =>
            charges.includes(charge.id) &&
            isOfLine(charge, line) &&
            // What the first order of the list pays is not asked for beside it, unless the maker typed an amount.
            !(charge.id === 'minimumOrder' && charge.paidByList !== null && ownOf(charge.id) === null),
        )
        .map((charge) => ({
          kind: charge.id,
          name: 'name' in charge ? charge.name : '',
          amount: ownOf(charge.id) ?? charge.written,
        })),
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

/** What each size adds to the first; a line whose charges differ by break has the most of them. */
function sizesOf(table: readonly TablePrice[]): FrozenItem['sizes'] {
  const most = new Map<string, number>();
  for (const { size, upCharge } of table) most.set(size, Math.max(upCharge, most.get(size) ?? upCharge));
  return [...most].map(([size, upCharge]) => ({ size, upCharge }));
}

function largestOf(
  prints: readonly { readonly widthMm: number; readonly heightMm: number }[],
): FrozenItem['largestPrint'] {
  const [largest] = prints.toSorted((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);
  return largest === undefined ? null : { widthMm: largest.widthMm, heightMm: largest.heightMm };
}

/** Raised prices and moved breaks are a list of their own, sold as it stands. */
function ruleOnPaper({ kind }: Selling): SellingRule {
  switch (kind) {
    case 'asListed':
    case 'cap':
    case 'slab':
    case 'tariff':
      return kind;
    case 'softened':
    case 'shifted':
      return 'asListed';
    default:
      return kind satisfies never;
  }
}
