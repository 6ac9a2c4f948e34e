import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { CheckedJob, ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { layOutJob } from '@/lib/layout/layOutJob';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { MinorUnits } from '@/shared/money';

interface SampleCharge {
  /** The size that is sampled: the one most are ordered of. */
  readonly size: string;
  /** Full cost of making one piece before the order, unrounded. */
  readonly cost: number;
  readonly written: MinorUnits;
}

/** What the order pays for in any case: the sample does not pay for it again. */
const borneByOrder = {
  enquiryMinutes: 0,
  proofMinutes: 0,
  packMinutes: 0,
  deliverMinutes: 0,
  deliveryKm: 0,
  freightIn: 0,
};

/**
 * A pressed sample: one piece of the size most wanted, in a session of its own, with a carton to send it in. Enquiry,
 * artwork, tests, freight and the drive belong to the order.
 *
 * @returns null where there is no such line, or a formula of the maker gives no number for it
 */
export function sampleCharge({ laidOut }: CostedJob, grid: Grid, lineId: string): SampleCharge | null {
  const { job } = laidOut;
  const line = job.lines.find((one) => one.line.id === lineId);
  const size = line && mostWanted(line);
  if (line === undefined || size === undefined) return null;
  const alone = asSample(job, { ...line, sizes: [{ ...size, quantity: 1 }] });
  const [point] = batchEvaluator(
    layOutJob(alone as CheckedJob),
    grid,
    borneByOrder,
  )([{ n: 1, priceEach: null }]);
  if (point == null) return null;
  return { size: size.size, cost: point.fullCost, written: writtenPrice(job, point.targetTotal) };
}

// Helpers

const mostWanted = ({ sizes }: ResolvedLine) => sizes.toSorted((a, b) => b.quantity - a.quantity)[0];

function asSample(job: ResolvedJob, line: ResolvedLine): ResolvedJob {
  return {
    ...job,
    lines: [
      {
        ...line,
        placements: line.placements.map((placed) => ({
          ...placed,
          placement: { ...placed.placement, testPresses: 0 },
          prepMinutes: { ...placed.prepMinutes, value: 0 },
        })),
      },
    ],
    ownRows: job.ownRows.map((row) => {
      const { cost } = row;
      if (cost.kind !== 'driver' || cost.amount === null) return row;
      const isOfOrder = cost.driver === 'order' || cost.driver === 'design';
      return isOfOrder ? { ...row, cost: { ...cost, amount: { ...cost.amount, value: 0 } } } : row;
    }),
  };
}
