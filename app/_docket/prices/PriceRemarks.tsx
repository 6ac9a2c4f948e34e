'use client';

import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { leastWords, type PriceVoice, ruleWords } from '@/app/_words/docket/pricesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { AskedAgainstList, RuleAtWork } from '@/lib/price/list/askedAgainstList';
import type { LineList } from '@/lib/price/list/lineList';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import type { Line } from '@/shared/schemas/job';
import { AskedRemark } from './AskedRemark';
import styles from './PriceRemarks.module.css';

type PriceRemarksProps = Readonly<{
  line: Line;
  list: LineList;
  asked: AskedAgainstList | null;
  rule: RuleAtWork | null;
  suggested: SuggestedPrice;
  targetMargin: number;
  /** Whether the job has other lines: it may then ask less than the list, which is for this one alone. */
  isOneOfSeveral: boolean;
  voice: PriceVoice;
}>;

/** Three short remarks on a list: what this job asks beside it, what it leaves at the least, and its rule at work. */
export function PriceRemarks(props: PriceRemarksProps) {
  const { line, list, asked, rule, suggested, targetMargin, isOneOfSeveral, voice } = props;
  const formatter = formatterFor(useTextContext());
  return (
    <ul className={styles.remarks}>
      {asked !== null && <AskedRemark {...{ line, asked, suggested, isOneOfSeveral, voice }} />}
      <li className={classes(styles.remark, list.leastMargin < targetMargin - 1e-9 && styles.differs)}>
        <p>{leastWords(list, targetMargin, formatter)}</p>
      </li>
      {/* The last, because it comes last: it pushes nothing that is being read. */}
      {rule !== null && (
        <li className={styles.remark}>
          <p>{ruleWords(rule, voice)}</p>
        </li>
      )}
    </ul>
  );
}
