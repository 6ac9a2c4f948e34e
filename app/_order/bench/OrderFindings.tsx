'use client';

import { FindingRow } from '@/app/_controls/FindingRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { lazyFindingWords } from '@/app/_words/findings/lazyFindingWords';
import { checkOrder } from '@/lib/check/order/checkOrder';
import styles from './Bench.module.css';
import { orderScene } from './orderScene';

type OrderFindingsProps = Readonly<{ on: OrderOnScreen; bench: Bench; id: 'TIM-03' | 'LAW-09' }>;

/** What a check of the order says, where it is looked for. */
export function OrderFindings({ on, bench, id }: OrderFindingsProps) {
  const context = useTextContext();
  const words = useLazy(lazyFindingWords);
  const findings = checkOrder(orderScene(on, bench)).filter((one) => one.id === id);
  if (findings.length === 0 || words.kind === 'coming') return null;
  if (words.kind === 'missing')
    return <PartMissing what="What the check says of the order" missing={words} />;
  return (
    <ul className={styles.findings}>
      {findings.map((finding) => {
        const { sentence, detail } = words.value(finding, context);
        return (
          <FindingRow key={finding.id} severity={finding.severity} sentence={sentence} detail={detail} />
        );
      })}
    </ul>
  );
}
