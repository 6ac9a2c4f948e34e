'use client';

import { classes } from '@/app/_controls/classes';
import { useJob } from '@/app/_docket/common/useJob';
import { ladderTaxWords, type PriceVoice } from '@/app/_words/docket/pricesWords';
import type { CostSheet } from '@/lib/grid/costSheet';
import { askedAgainstList, differsFromList, ruleAtWork } from '@/lib/price/list/askedAgainstList';
import type { LineList } from '@/lib/price/list/lineList';
import type { Offer, OfferedSizes } from '@/lib/price/offer';
import type { TablePrice } from '@/lib/price/priceTable';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Line } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { AskedRemark } from './AskedRemark';
import { DayNotCounted } from './DayNotCounted';
import { PriceCards } from './PriceCards';
import { PriceFalls } from './PriceFalls';
import { PriceLadder } from './PriceLadder';
import { PriceRemarks } from './PriceRemarks';
import remarks from './PriceRemarks.module.css';
import { PriceStairs } from './PriceStairs';
import styles from './PricesSection.module.css';

type PricesOpenProps = Readonly<{
  sheet: CostSheet;
  line: Line;
  list: LineList;
  suggested: SuggestedPrice;
  /** What the sizes of the line are offered at, and what the whole job leaves by it. */
  offered: readonly OfferedSizes[];
  whole: Pick<Offer, 'margin' | 'payPerHour'>;
  table: readonly TablePrice[];
  taxMode: Channel['taxMode'];
  /** What is worked out of the list beside its prices; null until it comes. */
  answer: BreaksAnswer | null;
  isOld: boolean;
  voice: PriceVoice;
}>;

/** The list of a line as it is looked at first: its prices, what orders pay by them, and what is to be said of it. */
export function PricesOpen(props: PricesOpenProps) {
  const { sheet, line, list, suggested, offered, whole, table, taxMode, answer, isOld, voice } = props;
  const { jobId, workspace } = useJob();
  const n = sheet.cases.find(({ lineId }) => lineId === line.id)?.batch ?? 0;
  const asked = askedAgainstList(line, list, { n, listEach: suggested.each }, voice.currency);
  if (list.rule === 'onePrice')
    return (
      <>
        <PriceCards
          offered={offered}
          whole={whole}
          neighbours={isOld ? null : (answer?.neighbours ?? null)}
          taxSaid={ladderTaxWords(taxMode)}
          voice={voice}
        />
        <DayNotCounted />
        {asked !== null && asked.asked !== null && differsFromList(asked) && (
          <ul className={classes(remarks.remarks, remarks.beneath)}>
            <AskedRemark {...{ line, asked, suggested, voice }} isOneOfSeveral={false} />
          </ul>
        )}
      </>
    );
  const stairs = answer?.staircase ?? null;
  const targetMargin = sheet.jobValues.targetMargin ?? 0;
  const cap = answer?.remedies.find(({ kind }) => kind === 'capped');
  const isOwn = table.some((cell) => cell.lineId === line.id && cell.isOwn);
  return (
    <>
      <PriceLadder {...{ list, n, taxMode, voice }} />
      <div className={styles.drawn}>
        {stairs === null ? (
          <p className={styles.coming} aria-busy="true">
            What orders pay is being worked out.
          </p>
        ) : (
          <PriceStairs
            {...{ stairs, asked, isOwn, targetMargin, voice }}
            hasTaxInside={taxMode === 'inside'}
          />
        )}
        {stairs !== null && stairs.falls.length > 0 ? (
          <PriceFalls
            {...{ stairs, voice }}
            blockedBy={isOld ? 'The job has changed; its list is being looked at anew.' : undefined}
            onTake={
              cap === undefined ? null : () => void workspace.applyFix(jobId, 'Use the rule', cap.changes)
            }
          />
        ) : (
          <PriceRemarks
            {...{ line, list, asked, suggested, targetMargin, voice }}
            isOneOfSeveral={sheet.lineIds.length > 1}
            rule={stairs === null ? null : ruleAtWork(stairs.held, list, n, voice.currency)}
          />
        )}
      </div>
    </>
  );
}
