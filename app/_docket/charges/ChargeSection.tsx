'use client';

import { Fragment, type ReactNode } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { AnswerComing } from '@/app/_docket/common/AnswerComing';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { likelyCharges } from '@/app/_words/docket/chargeWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { ChargeList } from './ChargeList';
import styles from './ChargeSection.module.css';

/** Section 8: what is charged around the price of a piece, and what of it that price bears already. */
export function ChargeSection() {
  const { jobId, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('charges', isPriced ? madeOf : null, null);
  const channel = madeOf.workshop.channels.find(({ id }) => id === madeOf.job.channelId);
  const found = newest?.answer ?? null;
  const likely = found === null ? [] : likelyCharges(found, formatterFor(context), context.locale);
  const isComing = isPriced && found === null && failure === null;
  return (
    <CardSection
      numeral={8}
      heading="Charges around the piece"
      answer={isComing ? <AnswerComing /> : answerOf(likely)}
      id="charges"
    >
      {!isPriced ? (
        <NotYet what="The charges" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The charges could not be worked out" failure={failure} />
          <div className={styles.room} aria-busy={newest?.input !== madeOf}>
            {found !== null && (
              <FoldRow
                place={jobId}
                folds={[
                  {
                    id: 'all-charges',
                    // Rush is one of them.
                    name: `All ${found.charges.length + 1} charges`,
                    body: () => <ChargeList found={found} taxMode={channel?.taxMode ?? null} />,
                  },
                ]}
              />
            )}
          </div>
        </>
      )}
    </CardSection>
  );
}

// Helpers

/** “A name 2.50, a late change 8.50.” */
function answerOf(likely: ReturnType<typeof likelyCharges>): ReactNode {
  if (likely.length === 0) return undefined;
  return (
    <>
      {likely.map(({ name, amount }, index) => (
        <Fragment key={name}>
          {index === 0 ? capitalized(name) : `, ${name}`} <strong>{amount}</strong>
        </Fragment>
      ))}
    </>
  );
}

const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
