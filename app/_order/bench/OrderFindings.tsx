'use client';

import { FindingRow } from '@/app/_controls/FindingRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { findingWords } from '@/app/_words/findings/findingWords';
import { checkOrder } from '@/lib/check/order/checkOrder';
import styles from './Bench.module.css';
import { orderScene } from './orderScene';

type OrderFindingsProps = Readonly<{ on: OrderOnScreen; bench: Bench; id: 'TIM-03' | 'LAW-09' }>;

/** What a check of the order says, where it is looked for. */
export function OrderFindings({ on, bench, id }: OrderFindingsProps) {
  const context = useTextContext();
  const findings = checkOrder(orderScene(on, bench)).filter((one) => one.id === id);
  if (findings.length === 0) return null;
  return (
    <ul className={styles.findings}>
      {findings.map((finding) => {
        const { sentence, detail } = findingWords(finding, context);
        return (
          <FindingRow key={finding.id} severity={finding.severity} sentence={sentence} detail={detail} />
        );
      })}
    </ul>
  );
}
