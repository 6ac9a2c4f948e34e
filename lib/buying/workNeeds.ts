import { judgeJob } from '@/lib/costing/priceJob';
import { blanksTaken, casesToCover } from '@/lib/grid/blanksTaken';
import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { rollUsed } from '@/lib/grid/rollUsed';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { RateOrigin } from '@/shared/schemas/rate';
import type { BuyingWork } from './buyingAsked';
import type { AskedOfCustomer } from './buyingPlan';
import { type InkNeed, inkNeed } from './inkNeed';

/** A price as the job knows it. */
export interface KnownPrice {
  /** Currency units. */
  readonly each: number;
  readonly origin: RateOrigin;
}

/** A size of a blank that the maker buys. */
export interface BlankNeed {
  readonly blankId: string;
  readonly name: string;
  readonly size: string;
  /** Good pieces, whole. */
  readonly pieces: number;
  /** That a blank ends good, by the standard. */
  readonly chance: number;
  /** The same with scrap as high as it may well be. */
  readonly lowestChance: number;
  readonly price: KnownPrice;
  readonly packSize: number;
  readonly leadWorkingDays: number | null;
}

/** What one job uses up. */
export interface WorkNeeds {
  readonly blanks: readonly BlankNeed[];
  readonly asked: readonly AskedOfCustomer[];
  readonly paper: {
    readonly sheetId: string;
    readonly name: string;
    readonly unit: 'sheet' | 'm';
    /** Sheets or metres for good pieces, and those expected with tests and rejects. */
    readonly good: number;
    readonly expected: number;
    readonly price: KnownPrice;
  };
  readonly ink: InkNeed;
  readonly use: {
    /** Whole sheets, tests and rejects among them. */
    readonly sheets: number;
    readonly sessions: number;
    /** With what the job reckons for tape and protective paper of one press, currency units. */
    readonly pressesBy: readonly {
      readonly pressId: string;
      readonly count: number;
      readonly tape: number;
      readonly protectivePaper: number;
    }[];
    /** With the packaging of one piece; null where it is packed in none. */
    readonly piecesBy: readonly {
      readonly packagingId: string | null;
      readonly count: number;
      readonly packaging: { readonly name: string; readonly each: number } | null;
    }[];
    /** Carton, tape and note for an order, currency units. */
    readonly packedFor: number;
  };
  /** Of the blanks, currency units; null where nobody has said. */
  readonly freight: number | null;
}

/** @returns null where a stop stands. A day that cannot be kept stops a price, but the goods are still to be bought. */
export function workNeeds(work: BuyingWork, grid: Grid): WorkNeeds | null {
  const { input } = work;
  const { priced } = judgeJob({ ...input, job: { ...input.job, wantedOn: null } }, grid);
  return priced === null ? null : needsOfCosted(work, priced.costed);
}

/** @returns the same of a job whose sums are known. */
export function needsOfCosted(work: BuyingWork, costed: CostedJob): WorkNeeds {
  const { sheet, laidOut } = costed;
  const { job } = laidOut;
  const roll = rollUsed(sheet, job.sheet);
  const good = laidOut.prints.reduce((sum, print) => sum + print.sheets * print.sheetWorth, 0);
  const expected = wholeJob(sheet, 'sheets');
  const perUnit = roll === null || expected === 0 ? 1 : roll.lengthMm / 1000 / expected;
  return {
    blanks: blanksOf(work, costed),
    asked: askedOf(work, costed),
    paper: {
      ...{ sheetId: job.sheet.id, name: job.sheet.name, unit: roll === null ? 'sheet' : 'm' },
      ...{ good: good * perUnit, expected: expected * perUnit },
      price: { each: job.sheet.price.value, origin: job.sheet.price.origin },
    },
    ink: inkNeed(costed),
    use: {
      sheets: expectedSheets(sheet),
      sessions: wholeJob(sheet, 'sessions'),
      pressesBy: job.lines.flatMap((line) => pressesOf(line, sheet)),
      packedFor: job.rates.packagingPerOrder.value,
      piecesBy: job.lines.map(({ line, sizes, packaging }) => ({
        packagingId: line.packagingId,
        packaging: packaging === null ? null : { name: packaging.name, each: packaging.perPiece.value },
        count: sizes.reduce((sum, { quantity }) => sum + quantity, 0),
      })),
    },
    freight: job.freightIn?.value ?? null,
  };
}

// Helpers

function blanksOf({ upperScrap = [] }: BuyingWork, { sheet, laidOut }: CostedJob): readonly BlankNeed[] {
  return casesToCover(sheet).flatMap(({ lineId, size, pieces, chance }) => {
    const line = laidOut.job.lines.find((one) => one.line.id === lineId);
    if (line === undefined || line.blank.suppliedBy === 'customer') return [];
    const { blank } = line;
    const price = line.sizes.find((one) => one.size === size)?.blankPrice;
    const sold = blank.sizes.find(({ name }) => name === size);
    return [
      {
        ...{ blankId: line.line.blankId, name: blank.name, size, pieces, chance },
        lowestChance: upperScrap.length === 0 ? chance : chanceAtUpper(line, upperScrap),
        price: { each: price?.value ?? 0, origin: price?.origin ?? 'typical' },
        packSize: sold?.packSize ?? 1,
        leadWorkingDays: blank.leadWorkingDays,
      },
    ];
  });
}

/** That a blank ends good where each press spoils as many as it may well do. */
const chanceAtUpper = (
  { line, placements, blankFault }: ResolvedLine,
  upper: NonNullable<BuyingWork['upperScrap']>,
): number =>
  placements.reduce((chance, { placement, scrap }) => {
    const told = upper.find((one) => one.lineId === line.id && one.placementId === placement.id);
    return chance * (1 - (told?.scrap ?? scrap.value));
  }, 1 - blankFault.value);

/** What the customer brings, as many as the sheet for the bench lays out. */
function askedOf({ jobId, orderId }: BuyingWork, { sheet, laidOut }: CostedJob): readonly AskedOfCustomer[] {
  const lineOf = (lineId: string) => laidOut.job.lines.find(({ line }) => line.id === lineId);
  const isBrought = (lineId: string) => lineOf(lineId)?.blank.suppliedBy === 'customer';
  const { take } = blanksTaken(sheet, (lineId) =>
    isBrought(lineId) ? null : (lineOf(lineId)?.line.blankId ?? lineId),
  );
  return laidOut.job.lines.flatMap(({ line, blank }) =>
    isBrought(line.id)
      ? [
          {
            ...{ jobId, orderId, lineId: line.id, blankId: line.blankId, name: blank.name },
            sizes: sheet.cases.flatMap(({ lineId, size, quantity }, index) =>
              lineId === line.id ? [{ size, pieces: quantity, ask: take[index] ?? quantity }] : [],
            ),
          },
        ]
      : [],
  );
}

const pressesOf = ({ line, placements }: ResolvedLine, sheet: CostSheet) =>
  placements.map(({ placement, press }, slot) => ({
    pressId: placement.pressId,
    tape: press.tape.value,
    protectivePaper: press.protectivePaper.value,
    count: sheet.cases.reduce(
      (sum, { lineId, quantity }, index) =>
        lineId === line.id ? sum + quantity * caseValue(sheet, `presses_${slot + 1}`, index) : sum,
      0,
    ),
  }));
