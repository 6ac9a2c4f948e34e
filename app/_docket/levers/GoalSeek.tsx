'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { goalSeekWords } from '@/app/_words/docket/goalSeekWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { GoalSeekQuestion } from '@/lib/studies/goalSeek/goalSeekAnswer';
import { soughtMarginSchema } from '@/lib/studies/goalSeek/soughtMarginSchema';
import { numberLimits } from '@/shared/limits';
import { fromMinor, toPriceEnding } from '@/shared/money';
import { lineSchema } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import { ratesSchema } from '@/shared/schemas/workshop';
import styles from './GoalSeek.module.css';

type Sought = GoalSeekQuestion['seek'];

const questions: readonly { readonly value: Sought; readonly label: string }[] = [
  { value: 'priceForMargin', label: 'the price for a margin' },
  { value: 'priceForPay', label: 'the price for a pay an hour' },
  { value: 'batchForMargin', label: 'the batch for a margin at a price' },
  { value: 'largestWage', label: 'the largest wage a price can bear' },
];

/** Questions turned round: what it takes to reach a margin, a pay or a batch. */
export function GoalSeek() {
  const { jobId, workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const today = useToday();
  const { changeJob } = workspace;
  const { rates, policy, currency } = madeOf.workshop;
  const [sought, setSought] = useState<Sought>('priceForMargin');
  const [margin, setMargin] = useState<number | null>(rates.targetMargin?.value ?? 0.3);
  const [perHour, setPerHour] = useState<number | null>(rates.wage?.value ?? 18);
  const [price, setPrice] = useState<number | null>(null);
  const question = questionOf();
  const { newest, failure } = useStudy(
    'seek',
    question === null || answer?.prices == null ? null : madeOf,
    question ?? { seek: 'priceForMargin', margin: 0 },
  );
  const isCurrent = newest?.input === madeOf && !stale;
  const told = newest === null || question === null ? null : newest.answer;
  const foundPrice = told === null ? null : priceFound();
  const wage = told?.seek === 'largestWage' && told.found.ok ? told.found.value : null;
  const needsMargin = sought === 'priceForMargin' || sought === 'batchForMargin';
  const needsPrice = sought === 'batchForMargin' || sought === 'largestWage';
  return (
    <section className={styles.seek} aria-labelledby="seek-heading">
      <h3 className="visuallyHidden" id="seek-heading">
        Ask the sums
      </h3>
      <FieldGroup>
        <ChoiceField label="I look for" value={sought} choices={questions} onCommit={setSought} />
        {needsMargin && (
          <MeasureField
            label="Margin"
            kind="share"
            width="narrow"
            value={margin}
            {...numberLimits(soughtMarginSchema, [])}
            onCommit={setMargin}
          />
        )}
        {sought === 'priceForPay' && (
          <NumberField
            label="Pay an hour"
            width="narrow"
            unit={currency}
            value={perHour}
            {...numberLimits(ratesSchema, ['wage', 'value'])}
            onCommit={setPerHour}
          />
        )}
        {needsPrice && (
          <NumberField
            label="Price a piece"
            width="narrow"
            unit={currency}
            value={price}
            {...numberLimits(lineSchema, ['askedPrice'])}
            hint="Empty for the price of this job."
            onCommit={setPrice}
          />
        )}
      </FieldGroup>
      <AnswerMissing what="It could not be worked out" failure={failure} />
      <p className={styles.answer} role="status">
        {failure !== null
          ? ' '
          : question === null
            ? 'A figure is missing in the question.'
            : told === null
              ? ' '
              : goalSeekWords(told, question, formatter)}
      </p>
      <div className={styles.take}>
        {foundPrice !== null && isCurrent && (
          <Button
            onPress={() =>
              changeJob(jobId, `Asked price ${formatter.money(foundPrice)}`, (job) => ({
                ...job,
                lines: job.lines.map((line) => ({
                  ...line,
                  askedPrice: foundPrice,
                  askedStart: null,
                  upCharges: [],
                })),
              }))
            }
          >
            Ask {formatter.money(foundPrice)} for every piece
          </Button>
        )}
        {wage !== null && isCurrent && (
          <Button
            onPress={() => {
              const rate: Rate<'money/h'> = {
                value: Number(wage.toPrecision(6)),
                unit: 'money/h',
                date: today,
                origin: 'yours',
              };
              changeJob(jobId, 'Pay in this job', (job) => ({ ...job, rates: { ...job.rates, wage: rate } }));
            }}
          >
            Count with {formatter.money(wage)} an hour in this job
          </Button>
        )}
      </div>
    </section>
  );

  /** The price that was found, lifted to the maker's ending. */
  function priceFound(): number | null {
    if (told?.seek !== 'priceForMargin' && told?.seek !== 'priceForPay') return null;
    if (!told.found.ok || !(told.found.value.each > 0)) return null;
    return fromMinor(toPriceEnding(told.found.value.each, policy.priceStep, currency), currency);
  }

  function questionOf(): GoalSeekQuestion | null {
    switch (sought) {
      case 'priceForMargin':
        return margin === null ? null : { seek: sought, margin };
      case 'priceForPay':
        return perHour === null ? null : { seek: sought, perHour };
      case 'batchForMargin':
        return margin === null ? null : { seek: sought, margin, price };
      case 'largestWage':
        return { seek: sought, price };
      default:
        return sought satisfies never;
    }
  }
}
