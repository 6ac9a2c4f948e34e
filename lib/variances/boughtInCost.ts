import { type MinorUnits, toMinor } from '@/shared/money';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/**
 * What of one finished piece was bought, by the standard: blank, paper, ink, supplies, packaging and power. Own pay,
 * overhead and wear are no part of it, for nobody has paid for them before it is sold.
 *
 * @returns whole minor units, as it lies in stock; null where the standard does not know the size
 */
export function boughtInCost(
  { works, currency }: Pick<RunStandard, 'works' | 'currency'>,
  of: { readonly jobId: string; readonly lineId: string; readonly size: string },
): MinorUnits | null {
  const found = works
    .find(({ jobId }) => jobId === of.jobId)
    ?.lines.find(({ lineId }) => lineId === of.lineId)
    ?.sizes.find(({ size }) => size === of.size);
  return found === undefined ? null : toMinor(Math.max(0, found.takes.boughtIn), currency);
}
