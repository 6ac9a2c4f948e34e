'use client';

import { useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { PickRow } from '@/app/_fields/PickRow';
import { JobOnPriceLists } from '@/app/_priceLists/JobOnPriceLists';
import { taxWords } from '@/app/_words/docket/taxWords';
import { PriceOwn } from './PriceOwn';
import { PricesOfLine } from './PricesOfLine';
import styles from './PricesSection.module.css';

/** Section 5: what to write on a price list, by size and by how many are ordered. */
export function PricesSection() {
  const { jobId, input, prices: shown } = useJob();
  const { answer, madeOf, stale } = shown;
  const { job, workshop } = madeOf;
  const [picked, setPicked] = useState('');
  const prices = answer?.prices ?? null;
  const sheet = answer?.costSheet ?? null;
  const lines = job.lines.filter(({ id }) => prices?.table.some(({ lineId }) => lineId === id));
  const line = lines.find(({ id }) => id === picked) ?? lines[0];
  const hasOwn = prices?.table.some(({ isOwn }) => isOwn) ?? false;
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  // The fields stay also while a stop withholds every figure: one of them may be what has to be mended.
  const now = input.job.lines.findIndex(({ id }) => id === (line?.id ?? input.job.lines[0]?.id));
  const nowLine = input.job.lines[now];
  const firstSize = prices?.table.find(({ lineId }) => lineId === nowLine?.id)?.size;
  return (
    <CardSection
      numeral={5}
      heading="Prices"
      answer={`${hasOwn ? 'your own prices and suggestions' : 'suggestions'} for a price list, ${taxWords(channel?.taxMode ?? null)}`}
      id="prices"
    >
      {prices === null || sheet === null || line === undefined ? (
        <NotYet what="Prices" />
      ) : (
        <>
          {stale && <LastGood />}
          {lines.length > 1 && (
            <div className={styles.picks}>
              <PickRow
                label="Line of the job"
                value={line.id}
                choices={lines.map(({ id, name }) => ({ value: id, label: name }))}
                onPick={setPicked}
              />
            </div>
          )}
          <PricesOfLine
            key={line.id}
            {...{ sheet, line }}
            table={prices.table}
            taxMode={channel?.taxMode ?? null}
          />
        </>
      )}
      {nowLine !== undefined && (
        <PriceOwn
          key={nowLine.id}
          line={nowLine}
          index={now}
          cells={
            prices?.table.filter(({ lineId, size }) => lineId === nowLine.id && size === firstSize) ?? []
          }
        />
      )}
      {prices !== null && !stale && <JobOnPriceLists jobId={jobId} input={madeOf} />}
    </CardSection>
  );
}
