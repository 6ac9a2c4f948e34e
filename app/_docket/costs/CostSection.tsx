'use client';

import { useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { casesKey } from '@/app/_trace/casesKey';
import styles from './CostSection.module.css';
import { CostTable } from './CostTable';
import { JobRates } from './JobRates';
import { moneyGoes } from './moneyGoes';
import { OwnRows } from './OwnRows';

/** Section 4: what each size costs and why, line by line; beneath it the maker's own rows and this job's rates. */
export function CostSection() {
  const { costs, figures } = useJob();
  const { job } = costs.madeOf;
  const { locale } = useTextContext();
  const [pickedLine, setLine] = useState('');
  const [pickedSize, setSize] = useState('');
  const lines = job.lines.filter(({ id }) => figures?.sheet.lineIds.includes(id));
  const line = lines.find(({ id }) => id === pickedLine) ?? lines[0];
  const sizes =
    figures?.sheet.cases.filter(({ lineId }) => lineId === line?.id).map(({ size }) => size) ?? [];
  const size = sizes.find((one) => one === pickedSize) ?? sizes[0] ?? '';
  return (
    <CardSection numeral={4} heading="Cost sheet" answer="every figure opens to its sum" id="cost-sheet">
      {figures === null || line === undefined ? (
        <NotYet what="The costs" />
      ) : (
        <>
          {costs.stale && <LastGood />}
          <p className={styles.goes}>{moneyGoes(figures.sheet, locale)}</p>
          <div className={styles.picks}>
            {lines.length > 1 && (
              <PickRow
                label="Line of the job"
                value={line.id}
                choices={lines.map(({ id, name }) => ({ value: id, label: name }))}
                onPick={setLine}
              />
            )}
            {sizes.length > 1 && (
              <PickRow
                label="Size beside the whole job"
                phoneOnly
                value={size}
                choices={sizes.map((value) => ({ value, label: value }))}
                onPick={setSize}
              />
            )}
          </div>
          <CostTable key={`${line.id} ${casesKey(figures.sheet)}`} names={figures} line={line} size={size} />
        </>
      )}
      <OwnRows />
      <JobRates />
    </CardSection>
  );
}
