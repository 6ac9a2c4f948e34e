'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { namesInWords } from '@/app/_words/docket/jobWords';
import { formatterFor } from '@/app/_words/formatter';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { fromMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';
import styles from './BreaksTest.module.css';

type PriceSizesProps = Readonly<{
  line: Line;
  index: number;
  answer: BreaksAnswer;
  /** The step up-charges are written in, currency units. */
  step: number;
}>;

/** Whether larger sizes add a charge of their own, or one price over the mix covers all. */
export function PriceSizes({ line, index, answer, step }: PriceSizesProps) {
  const formatter = formatterFor(useTextContext());
  const { jobId, workspace } = useJob();
  const { upCharges, currency } = answer;
  if (upCharges === null || upCharges.sizes.length < 2) return null;
  const money = (minor: typeof upCharges.averaged) => formatter.money(fromMinor(minor, currency));
  const charged = upCharges.sizes.filter(({ written }) => written > 0);
  const charges = namesInWords(charged.map(({ size, written }) => `${size} ${money(written)}`));
  const isAveraged = line.upCharging === 'averaged';
  const alike = charged.length === 0;
  if (alike && !isAveraged) return null;
  const hasOwn = line.ownPrices.length > 0 && line.upCharges.length > 0;
  return (
    <div className={styles.row}>
      <p>
        {isAveraged
          ? `One price covers all sizes, averaged over the sizes really ordered: ${money(upCharges.averaged)} in this batch.${alike ? '' : ` Charged apart, ${charges} would come on top of ${money(upCharges.basePrice)}.`}`
          : `Larger sizes add a charge of their own. In this batch, in steps of ${formatter.money(step)}, they ask for ${charges} more than ${upCharges.base}; averaged over the sizes really ordered, one price would be ${money(upCharges.averaged)}.`}
        {hasOwn && !isAveraged && ' On your own prices come the up-charges you typed for the line.'}
      </p>
      <Button
        onPress={() =>
          void workspace.setField(
            { kind: 'job', id: jobId },
            `Sizes of ${line.name}`,
            ['lines', index, 'upCharging'],
            isAveraged ? 'separate' : 'averaged',
          )
        }
      >
        {isAveraged ? 'Charge sizes apart' : 'One price for all sizes'}
      </Button>
    </div>
  );
}
