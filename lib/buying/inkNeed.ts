import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import { withBlackShare } from '@/lib/ink/generateBlack';
import type { ResolvedPlacement } from '@/lib/job/checkedJob';
import { type InkName, strongInks } from '@/lib/stock/inkChannels';
import type { RateOrigin } from '@/shared/schemas/rate';

/** Ink that one job uses up, spoiled prints, tests and cleaning among it. */
export interface InkNeed {
  readonly printerId: string;
  readonly name: string;
  readonly mL: number;
  /** What of it is known by channel. */
  readonly channels: Readonly<Record<InkName, number>>;
  /** What no channel is known of. */
  readonly untoldMl: number;
  readonly price: { readonly each: number; readonly origin: RateOrigin };
}

/**
 * The ink of the sums, by channel as the pictures have it. How a picture is cropped moves all its channels alike, as
 * far as is known. Cleaning takes of each channel as much, from memory; a printer without black has three.
 */
export function inkNeed({ sheet, laidOut: { job } }: CostedJob): InkNeed {
  const mL = wholeJob(sheet, 'inkMl');
  const cleaned = wholeJob(sheet, 'inkSession');
  const parts = job.lines.flatMap(({ line, placements }) =>
    placements.map((placement, slot) => ({
      shares: channelShares(placement),
      weight: printedOf(sheet, line.id, slot + 1),
    })),
  );
  const weights = parts.reduce((sum, { weight }) => sum + weight, 0);
  const printed = (weight: number) => (weights === 0 ? 0 : ((mL - cleaned) * weight) / weights);
  const untoldMl = parts.reduce(
    (sum, { shares, weight }) => (shares === null ? sum + printed(weight) : sum),
    0,
  );
  const cleanedNames = strongInks(job.printer.blackShare.value);
  const channelMl = (name: InkName) =>
    parts.reduce(
      (sum, { shares, weight }) => sum + printed(weight) * (shares?.[name] ?? 0),
      cleanedNames.includes(name) ? cleaned / cleanedNames.length : 0,
    );
  return {
    ...{ printerId: job.printer.id, name: job.printer.name, mL, untoldMl },
    channels: {
      Cyan: channelMl('Cyan'),
      Magenta: channelMl('Magenta'),
      Yellow: channelMl('Yellow'),
      Black: channelMl('Black'),
    },
    price: { each: job.rates.inkPrice.value, origin: job.rates.inkPrice.origin },
  };
}

// Helpers

/** @returns share of each channel of a print's ink; null where only a total is known. */
function channelShares({
  artwork,
  totalCoverage,
}: ResolvedPlacement): Readonly<Record<InkName, number>> | null {
  const found =
    totalCoverage.origin === 'read' && artwork.picture !== null
      ? withBlackShare(artwork.picture.coverage, totalCoverage.blackShare)
      : artwork.coverage?.kind === 'channels'
        ? artwork.coverage
        : null;
  if (found === null) return null;
  const { cyan, magenta, yellow, black } = found;
  const total = cyan + magenta + yellow + black;
  if (total === 0) return null;
  return { Cyan: cyan / total, Magenta: magenta / total, Yellow: yellow / total, Black: black / total };
}

/** @returns ink of all prints of a placement, as the sums have it, tests among them. */
function printedOf(sheet: CostSheet, lineId: string, slot: number): number {
  const reject = sheet.inputs.job.sheetReject?.value ?? 0;
  return sheet.cases.reduce((sum, one, index) => {
    if (one.lineId !== lineId) return sum;
    const prints =
      caseValue(sheet, `entering_${slot}`, index) / (1 - reject) +
      caseValue(sheet, `testsShared_${slot}`, index);
    return sum + one.quantity * prints * caseValue(sheet, `inkPerPrint_${slot}`, index);
  }, 0);
}
