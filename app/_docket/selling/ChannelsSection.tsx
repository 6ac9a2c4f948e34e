'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { AnswerComing } from '@/app/_docket/common/AnswerComing';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { problemFields, sellingAnswer } from '@/app/_words/docket/sellingWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { TillPart } from './TillPart';
import { WaysOfSelling } from './WaysOfSelling';

/** Section 9: which way of selling pays best; folded, all four side by side, and what the buyer pays at the till. */
export function ChannelsSection() {
  const { jobId, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('channels', isPriced ? madeOf : null, null);
  const found = newest?.answer ?? null;
  return (
    <CardSection
      numeral={9}
      heading="Ways of selling"
      answer={
        found === null
          ? isPriced && failure === null && <AnswerComing />
          : found.problem === null && <Answer words={sellingAnswer(found.ways, context.locale)} />
      }
      id="channels"
    >
      {!isPriced ? (
        <NotYet what="The ways of selling" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The ways of selling could not be compared" failure={failure} />
          {found !== null && found.problem !== null && (
            <p role="alert">
              {found.problem.kind === 'unknownCost'
                ? 'A formula of your own gives no number for another way of selling.'
                : `${found.problem.name}: its ${problemFields[found.problem.field]} of ${formatter.number(found.problem.value)} cannot be meant. Look at it in the workshop; a share lies under 100 %.`}
            </p>
          )}
          <FoldRow
            place={jobId}
            folds={[
              {
                id: 'selling-ways',
                name: 'Four ways side by side',
                body: () =>
                  found === null ? (
                    <p>The ways of selling are being compared.</p>
                  ) : (
                    <WaysOfSelling found={found} />
                  ),
              },
              {
                id: 'selling-till',
                name: 'At the till',
                body: () =>
                  found === null ? (
                    <p>The sum is being worked out.</p>
                  ) : (
                    <TillPart till={found.till} currency={found.currency} />
                  ),
              },
            ]}
          />
        </>
      )}
    </CardSection>
  );
}
