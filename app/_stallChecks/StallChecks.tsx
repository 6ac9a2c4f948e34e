'use client';

import { useToday } from '@/app/_clock/useToday';
import { FindingRow } from '@/app/_controls/FindingRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import { checkStallDay } from '@/lib/stall/check/checkStallDay';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './StallChecks.module.css';

type StallChecksProps = Readonly<{ id: string; stallDay: StallDay; workshop: Pick<Workshop, 'presses'> }>;

/** What the check says of a stall day: its power, its permit and insurance; nothing where all is well. */
export function StallChecks({ id, stallDay, workshop: { presses } }: StallChecksProps) {
  const context = useTextContext();
  const today = useToday();
  const findings = checkStallDay({ stallDayId: id, stallDay, presses, today });
  if (findings.length === 0) return null;
  return (
    <ul className={styles.findings}>
      {findings.map((finding) => {
        const { sentence, detail } = findingWords(finding, context);
        return (
          <FindingRow
            key={`${finding.id} ${finding.variant}`}
            severity={finding.severity}
            sentence={sentence}
            detail={detail}
          />
        );
      })}
    </ul>
  );
}
