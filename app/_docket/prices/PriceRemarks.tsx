'use client';

import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import {
  askedWords,
  leastWords,
  listMoney,
  type PriceVoice,
  ruleWords,
} from '@/app/_words/docket/pricesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { AskedAgainstList, RuleAtWork } from '@/lib/price/list/askedAgainstList';
import type { LineList } from '@/lib/price/list/lineList';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import type { Line } from '@/shared/schemas/job';
import { askPrice } from './askTablePrices';
import styles from './PriceRemarks.module.css';

type PriceRemarksProps = Readonly<{
  line: Line;
  list: LineList;
  asked: AskedAgainstList | null;
  rule: RuleAtWork | null;
  suggested: SuggestedPrice;
  targetMargin: number;
  voice: PriceVoice;
}>;

/** Three short remarks on a list: what this job asks beside it, its rule at work, and what it leaves at the least. */
export function PriceRemarks(props: PriceRemarksProps) {
  const { line, list, asked, rule, suggested, targetMargin, voice } = props;
  const { jobId, workspace, prices } = useJob();
  const formatter = formatterFor(useTextContext());
  const differs = asked !== null && (asked.asked === null || asked.over !== 0 || asked.sizes.length > 0);
  return (
    <ul className={styles.remarks}>
      {asked !== null && (
        <li className={classes(styles.remark, differs && styles.differs)}>
          <p>{askedWords(asked, voice)}</p>
          {differs && !prices.stale && (
            <Button
              onPress={() =>
                workspace.changeJob(jobId, `Asked price of ${line.name}`, (job) =>
                  askPrice(job, suggested, voice.currency),
                )
              }
            >
              Ask {listMoney(suggested.each, voice)}
            </Button>
          )}
        </li>
      )}
      {rule !== null && (
        <li className={styles.remark}>
          <p>{ruleWords(rule, voice)}</p>
        </li>
      )}
      <li className={classes(styles.remark, list.leastMargin < targetMargin - 1e-9 && styles.differs)}>
        <p>{leastWords(list, targetMargin, formatter)}</p>
      </li>
    </ul>
  );
}
