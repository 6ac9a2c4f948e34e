'use client';

import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { useJob } from '@/app/_docket/common/useJob';
import { askedWords, listMoney, type PriceVoice } from '@/app/_words/docket/pricesWords';
import { type AskedAgainstList, differsFromList } from '@/lib/price/list/askedAgainstList';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import type { Line } from '@/shared/schemas/job';
import { askPrice } from './askTablePrices';
import styles from './PriceRemarks.module.css';

type AskedRemarkProps = Readonly<{
  line: Line;
  asked: AskedAgainstList;
  suggested: SuggestedPrice;
  /** Whether the job has other lines: it may then ask less than the list, which is for this one alone. */
  isOneOfSeveral: boolean;
  voice: PriceVoice;
}>;

/** What this job asks beside its list, and where that differs the way to ask what the list does. */
export function AskedRemark({ line, asked, suggested, isOneOfSeveral, voice }: AskedRemarkProps) {
  const { jobId, workspace, prices } = useJob();
  // The head suggests what the list asks of this job: said once is enough.
  if (asked.asked === null && asked.held === null) return null;
  const sharesSetUp = isOneOfSeveral && asked.over < 0 && asked.sizes.length === 0;
  const differs = differsFromList(asked) && !sharesSetUp;
  return (
    <li className={classes(styles.remark, differs && styles.differs)}>
      <p>{askedWords(asked, isOneOfSeveral, voice)}</p>
      {differs && !prices.stale && (
        <Button
          onPress={() =>
            workspace.changeJob(jobId, `Asked price of ${line.name}`, (job) =>
              askPrice(job, suggested, voice.currency),
            )
          }
        >
          Ask {suggested.start > 0 && `${listMoney(suggested.start, voice)} and `}
          {listMoney(suggested.each, voice)}
        </Button>
      )}
    </li>
  );
}
