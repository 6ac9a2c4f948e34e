'use client';

import Link from 'next/link';
import { CardSection } from '@/app/_controls/CardSection';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { chargeWords, rushWords } from '@/app/_words/docket/chargeWords';
import { taxWords } from '@/app/_words/docket/taxWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { formatMinor } from '@/shared/money';
import styles from './ChargeSection.module.css';

/** Section 8: what is charged around the price of a piece, for quotes and price lists; no part of the job's own cost. */
export function ChargeSection() {
  const { answer, madeOf, stale } = useJob().prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('charges', isPriced ? madeOf : null, null);
  const channel = madeOf.workshop.channels.find(({ id }) => id === madeOf.job.channelId);
  const found = newest?.answer ?? null;
  return (
    <CardSection
      numeral={8}
      heading="Charges around the piece"
      answer={`suggestions for quotes and price lists, ${taxWords(channel?.taxMode ?? null)}`}
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
              <dl className={styles.charges}>
                {found.charges.map((charge) => {
                  const { key, name, says } = chargeWords(charge, formatter);
                  return (
                    <div className={styles.charge} key={key}>
                      <dt>
                        <span className={styles.name}>{name}</span>
                        <span className={styles.says}>{says}</span>
                      </dt>
                      <dd className={styles.amount}>
                        {formatMinor(charge.written, found.currency, context.locale)}
                      </dd>
                    </div>
                  );
                })}
                <div className={styles.charge}>
                  <dt>
                    <span className={styles.name}>Rush</span>
                    <span className={styles.says}>{rushWords(found.rush, formatter)}</span>
                  </dt>
                  <dd className={styles.amount}>
                    {found.rush?.outcome.kind === 'rush'
                      ? `+ ${formatter.share(found.rush.outcome.share)}`
                      : '–'}
                  </dd>
                </div>
              </dl>
            )}
          </div>
          <p className={styles.assumes}>
            Each is what it costs you, own pay included, at the target margin, lifted to your price ending;
            the least order is at the profit you set for one. But for the delivery none of it is in the cost
            of this job. <Link href="/workshop#charges">Minutes, least charges and rush shares</Link> are set
            in the workshop. Set-up and art charges can be taxed too: ask your local authority.
          </p>
        </>
      )}
    </CardSection>
  );
}
