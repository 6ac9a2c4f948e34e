'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { BreakListFormat } from '@/app/_words/docket/breakListWords';
import { formatterFor } from '@/app/_words/formatter';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Line } from '@/shared/schemas/job';
import { BreaksTest } from './BreaksTest';
import styles from './BreaksTest.module.css';
import { PriceSizes } from './PriceSizes';
import { PriceTariff } from './PriceTariff';

type PriceRuleProps = Readonly<{
  line: Line;
  index: number;
  answer: BreaksAnswer;
  piece: string;
  format: BreakListFormat;
  stale: boolean;
}>;

const rules = [
  { value: 'workshop', label: 'as your workshop prices' },
  { value: 'capped', label: 'by quantity, none dearer than a larger one' },
  { value: 'setUpApart', label: 'so much to start and so much a piece' },
  { value: 'asListed', label: 'by quantity, as listed' },
  { value: 'onePrice', label: 'one price a size' },
  { value: 'slab', label: 'by slabs: a lower price for the pieces beyond a break' },
] as const;

/** Another rule for this line, what its list does under the one it has, and what else it could be. */
export function PriceRule({ line, index, answer, piece, format, stale }: PriceRuleProps) {
  const { jobId, input, workspace } = useJob();
  const { policy } = input.workshop;
  return (
    <div className={styles.folded}>
      <ChoiceField
        label="Orders are priced"
        value={line.selling ?? 'workshop'}
        choices={rules}
        hint="For this line of this job; no other is touched."
        onCommit={(rule) =>
          void workspace.setField(
            { kind: 'job', id: jobId },
            `Rule of ${line.name}`,
            ['lines', index, 'selling'],
            rule === 'workshop' ? null : rule,
          )
        }
      />
      <PriceSizes {...{ line, index, answer }} step={policy.upChargeStep ?? policy.priceStep} />
      <BreaksTest {...{ answer, piece, format, stale }} lineId={line.id} />
      <PriceTariff {...{ answer, piece, format }} priceStep={policy.priceStep} />
    </div>
  );
}

/** How the list of a line is spoken of. */
export function useListFormat(answer: BreaksAnswer | null): BreakListFormat {
  const context = useTextContext();
  return {
    formatter: formatterFor(context),
    currency: answer?.currency ?? context.currency,
    locale: context.locale,
    sizes: [...new Set((answer?.ends ?? []).map(({ size }) => size))],
  };
}
