'use client';

import { useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { type FoldOfRow, FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { fieldId } from '@/app/_docket/common/fieldId';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { JobOnPriceLists } from '@/app/_priceLists/JobOnPriceLists';
import { useStudy } from '@/app/_studies/useStudy';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { type PriceVoice, pricesAnswer } from '@/app/_words/docket/pricesWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { PriceOrders } from './PriceOrders';
import { PriceOwn } from './PriceOwn';
import { PriceRule, useListFormat } from './PriceRule';
import { PricesOpen } from './PricesOpen';
import styles from './PricesSection.module.css';
import { PriceTable } from './PriceTable';

/** Section 5: the list of a line as it can be printed; folded, what it leaves, other rules, own prices and orders. */
export function PricesSection() {
  const { jobId, input, prices: shown } = useJob();
  const { answer, madeOf, stale } = shown;
  const { job, workshop, blanks } = madeOf;
  const context = useTextContext();
  const [picked, setPicked] = useState('');
  const [pieces, setPieces] = useState<number | null>(null);
  const prices = answer?.prices ?? null;
  const sheet = answer?.costSheet ?? null;
  const lines = job.lines.filter(({ id }) => prices?.lists.some(({ lineId }) => lineId === id));
  const line = lines.find(({ id }) => id === picked) ?? lines[0];
  const list = prices?.lists.find(({ lineId }) => lineId === line?.id);
  const suggested = prices?.suggested.find(({ lineId }) => lineId === line?.id);
  const offered = prices?.offer.lines.find(({ lineId }) => lineId === line?.id);
  const { newest, failure } = useStudy('list', line === undefined ? null : madeOf, {
    lineId: line?.id ?? '',
    quantities: pieces === null ? [] : [pieces],
  });
  // Of an older state of the job it stays in view until the new one comes, but nothing is done by it.
  const looked = newest !== null && newest.answer.lineId === line?.id ? newest.answer : null;
  const isOld = stale || newest?.input !== madeOf;
  const format = useListFormat(looked);
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  const taxMode = channel?.taxMode ?? null;
  // The fields stay also while a stop withholds every figure: one of them may be what has to be mended.
  const now = input.job.lines.findIndex(({ id }) => id === (line?.id ?? input.job.lines[0]?.id));
  const nowLine = input.job.lines[now];
  const firstSize = prices?.table.find(({ lineId }) => lineId === nowLine?.id)?.size;
  const ready =
    prices !== null && sheet !== null && line !== undefined && list !== undefined && suggested !== undefined;
  const piece = pieceWords(line === undefined ? undefined : blanks[line.blankId]);
  const voice: PriceVoice = { context, currency: prices?.currency ?? context.currency, piece };
  const ofList: readonly FoldOfRow[] =
    ready && nowLine !== undefined
      ? [
          {
            id: 'prices-for-you',
            name: 'For you: margin, pay an hour',
            body: () => (
              <PriceTable
                key={line.id}
                {...{ sheet, line, taxMode }}
                rule={list.rule}
                table={prices.table}
                ends={isOld ? null : (looked?.ends ?? null)}
                priceStep={workshop.policy.priceStep}
              />
            ),
          },
          {
            id: 'prices-rule',
            name: 'Another rule',
            body: () =>
              looked === null ? (
                <p>The rules are being compared.</p>
              ) : (
                <PriceRule
                  key={line.id}
                  {...{ format }}
                  line={nowLine}
                  index={now}
                  answer={looked}
                  piece={piece.one}
                  stale={isOld}
                />
              ),
          },
        ]
      : [];
  return (
    <CardSection
      numeral={5}
      heading="Prices"
      answer={
        ready && (
          <Answer words={pricesAnswer(list, looked?.staircase.falls ?? [], offered?.sizes ?? [], voice)} />
        )
      }
      id="prices"
    >
      {!ready ? (
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
          <PricesOpen
            key={line.id}
            {...{ sheet, line, list, suggested, taxMode, isOld, voice }}
            table={prices.table}
            offered={offered?.sizes ?? []}
            whole={prices.offer}
            answer={looked}
          />
          <AnswerMissing what="The prices of this line could not be looked at" failure={failure} />
        </>
      )}
      <FoldRow
        key={nowLine?.id}
        place={jobId}
        folds={[
          ...ofList,
          ...(nowLine === undefined
            ? []
            : [
                {
                  id: fieldId(['lines', now, 'prices']),
                  name: 'Your own prices',
                  holds: [fieldId(['lines', now, 'ownPrices']), fieldId(['lines', now, 'breaks'])],
                  body: () => (
                    <PriceOwn
                      key={nowLine.id}
                      line={nowLine}
                      index={now}
                      cells={
                        prices?.table.filter(
                          ({ lineId, size }) => lineId === nowLine.id && size === firstSize,
                        ) ?? []
                      }
                    />
                  ),
                },
              ]),
          ...(looked === null
            ? []
            : [
                {
                  id: 'prices-order',
                  name: 'What an order pays',
                  body: () => <PriceOrders {...{ format, pieces }} answer={looked} onPieces={setPieces} />,
                },
              ]),
        ]}
      />
      {prices !== null && !stale && <JobOnPriceLists jobId={jobId} input={madeOf} />}
    </CardSection>
  );
}
