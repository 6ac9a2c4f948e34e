'use client';

import { useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { fieldId } from '@/app/_docket/common/fieldId';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { casesKey } from '@/app/_trace/casesKey';
import { costAnswer } from '@/app/_words/docket/costWords';
import { piecesOfJob } from '@/app/_words/docket/pieceWords';
import { CostLines } from './CostLines';
import { CostOverview } from './CostOverview';
import styles from './CostSection.module.css';
import { JobRates } from './JobRates';
import { OwnRows } from './OwnRows';

/** Section 4: what a piece costs and where the money goes; folded, every line by size, own rows and this job's rates. */
export function CostSection() {
  const { jobId, costs, figures } = useJob();
  const { job } = costs.madeOf;
  const { locale } = useTextContext();
  const [picked, setPicked] = useState('');
  const lines = job.lines.filter(({ id }) => figures?.sheet.lineIds.includes(id));
  const line = lines.find(({ id }) => id === picked) ?? lines[0];
  const ready = figures !== null && line !== undefined;
  return (
    <CardSection
      numeral={4}
      heading="Cost"
      answer={ready && <Answer words={costAnswer(figures.sheet, piecesOfJob(costs.madeOf), locale)} />}
      id="cost-sheet"
    >
      {!ready ? (
        <NotYet what="The costs" />
      ) : (
        <>
          {costs.stale && <LastGood />}
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
          <CostOverview key={`${line.id} ${casesKey(figures.sheet)}`} names={figures} line={line} />
        </>
      )}
      {/* Rows and rates stay also while a stop withholds every figure: one of them may be what has to be mended. */}
      <FoldRow
        place={jobId}
        folds={[
          ...(ready
            ? [
                {
                  id: 'cost-lines',
                  name: 'Every line by size',
                  body: () => <CostLines names={figures} line={line} />,
                },
              ]
            : []),
          {
            id: 'cost-own-rows',
            name: 'Your own rows',
            holds: [fieldId(['ownRows']), workshopFieldId(['ownRows']), 'own-rows'],
            body: () => <OwnRows />,
          },
          {
            id: 'cost-rates',
            name: 'Rates for this job',
            holds: [fieldId(['rates']), 'cost-rates'],
            body: () => <JobRates />,
          },
        ]}
      />
    </CardSection>
  );
}
