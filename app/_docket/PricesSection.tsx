'use client';

import { useState } from 'react';
import { PickRow } from '../_fields/PickRow';
import { DocketSection } from '../_figures/DocketSection';
import type { DocketPart } from './docketPart';
import { LastGood } from './LastGood';
import { NotYet } from './NotYet';
import styles from './PricesSection.module.css';
import { PriceTable } from './PriceTable';
import { taxWords } from './taxWords';

/** Section 5: what to write on a price list, by size and by how many are ordered. */
export function PricesSection(part: DocketPart) {
  const { jobId, answer, madeOf, stale } = part;
  const { job, workshop } = madeOf;
  const [picked, setPicked] = useState('');
  const prices = answer?.prices ?? null;
  const sheet = answer?.costSheet ?? null;
  const lines = job.lines.filter(({ id }) => prices?.table.some(({ lineId }) => lineId === id));
  const line = lines.find(({ id }) => id === picked) ?? lines[0];
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  return (
    <DocketSection
      numeral={5}
      heading="Prices"
      line={`suggestions for a price list, ${taxWords(channel?.taxMode ?? null)}`}
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
          <PriceTable
            key={line.id}
            {...{ jobId, sheet, stale, line }}
            table={prices.table}
            priceStep={workshop.policy.priceStep}
            taxMode={channel?.taxMode ?? null}
          />
        </>
      )}
    </DocketSection>
  );
}
