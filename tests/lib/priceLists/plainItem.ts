import { type FrozenOutcome, freezeItem } from '@/lib/priceLists/freezeItem';
import type { Line } from '@/shared/schemas/job';
import type { FrozenItem, PriceListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import { grid } from '@/tests/fixtures/costed';
import { plainJob } from '@/tests/fixtures/plainJob';

interface PlainItem {
  /** What the one blank costs. */
  readonly blank?: number;
  /** Costs an order, whatever it is of. */
  readonly freight?: number;
  readonly line?: Partial<Line>;
}

/** Ten pieces at a target margin of 40 %, priced from 1 and from 10: 10.00 where only a blank of 6.00 costs anything. */
export function plainItem({ blank = 6, freight, line }: PlainItem = {}): JobInput {
  const input = plainJob({
    sizes: [{ quantity: 10, blank }],
    rates: { targetMargin: 0.4 },
    ...(freight === undefined ? {} : { freight }),
  });
  return {
    ...input,
    workshop: { ...input.workshop, policy: { ...input.workshop.policy, breaks: [1, 10] } },
    job: { ...input.job, lines: input.job.lines.map((one) => ({ ...one, ...line })) },
  };
}

export const freeze = (
  input: JobInput,
  lineId = 'line',
  charges: PriceListItem['charges'] = [],
  ownAmounts: PriceListItem['ownAmounts'] = [],
): FrozenOutcome => freezeItem(input, grid, { id: 'item', jobId: 'job', lineId, charges, ownAmounts });

/** The item as it is issued; a refusal fails the test. */
export function frozen(...asked: Parameters<typeof freeze>): FrozenItem {
  const outcome = freeze(...asked);
  if (outcome.kind !== 'frozen') throw new Error(JSON.stringify(outcome));
  return outcome.item;
}
