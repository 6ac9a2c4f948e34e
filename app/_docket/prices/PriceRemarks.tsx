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
import type { TablePrice } from '@/lib/price/priceTable';
import type { Line } from '@/shared/schemas/job';
import { askTablePrices } from './askTablePrices';
import styles from './PriceRemarks.module.css';

type PriceRemarksProps = Readonly<{
  line: Line;
  list: LineList;
  asked: AskedAgainstList | null;
  rule: RuleAtWork | null;
  table: readonly TablePrice[];
  targetMargin: number;
  /** Whether the job has other lines: it may then ask less than the list, which is for this one alone. */
  isOneOfSeveral: boolean;
  voice: PriceVoice;
}>;

/** Three short remarks on a list: what this job asks beside it, its rule at work, and what it leaves at the least. */
export function PriceRemarks(props: PriceRemarksProps) {
  const { line, list, asked, rule, table, targetMargin, isOneOfSeveral, voice } = props;
  const { jobId, workspace, prices } = useJob();
  const formatter = formatterFor(useTextContext());
  const cell = table.find(({ lineId, from }) => lineId === line.id && from === asked?.from);
  const differs =
    asked !== null &&
    asked.held === null &&
    (asked.asked === null ||
      isStartAnother(asked, isOneOfSeveral) ||
      asked.over > 0 ||
      (asked.over < 0 && !isOneOfSeveral) ||
      asked.sizes.length > 0);
  return (
    <ul className={styles.remarks}>
      {asked !== null && (
        <li className={classes(styles.remark, differs && styles.differs)}>
          <p>{askedWords(asked, isOneOfSeveral, voice)}</p>
          {differs && cell !== undefined && !prices.stale && (
            <Button
              onPress={() =>
                workspace.changeJob(jobId, `Asked price of ${line.name}`, (job) =>
                  askTablePrices(job, table, cell, voice.currency),
                )
              }
            >
              Ask {asked.start !== null && `${listMoney(asked.start.listed, voice)} and `}
              {listMoney(asked.listEach, voice)}
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

// Helpers

const isStartAnother = ({ start }: AskedAgainstList, isOneOfSeveral: boolean): boolean =>
  start !== null && (isOneOfSeveral ? start.asked > start.listed : start.asked !== start.listed);
